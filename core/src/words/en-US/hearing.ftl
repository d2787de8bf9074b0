### The screen of probes: what is heard, where it sits, and what keeps it from being heard.

hearing-title = Probes
hearing-lead = Heard are probes with the Bluetooth services Health Thermometer or Environmental Sensing. A probe that stays in tells when to read by hand; it calls nothing done.
hearing-look = Find probes nearby
hearing-stop = Stop looking
hearing-nearby = Found nearby
hearing-none-yet = Nothing new found yet. Switch the probe on and hold it close to this phone.
hearing-keep = Listen to it
hearing-forget = Forget this probe on this phone
hearing-where = Where does it sit?
hearing-elsewhere = Not kept on this phone; another one may hear it
# $name is what the probe calls itself, $sensor the number of its channel.
hearing-channel = { $name }, channel { $sensor }
hearing-unplaced = No place yet: it counts nowhere
hearing-unplaced-reads = { $temp }, { $age }. No place yet: it counts nowhere
hearing-link-nearby = Nearby, not kept
hearing-link-reaching = Not reached now; tried again on its own
hearing-link-linked = Linked
hearing-link-foreign = Has neither service, or says nothing on its own. Use another probe
# $since is a time of day. Said of a pit or a meat.
hearing-gap = A probe in it is silent since { $since }

## What keeps probes from being found or heard, each with its button.

hearing-radio-missing = This phone has no Bluetooth Low Energy: it hears no probe. Read by hand, or use another phone.
hearing-radio-refused = Slowbend may not use Bluetooth, so it hears no probe. Allow “Nearby devices”.
hearing-location-refused = This version of Android finds probes only with the permission for the location. Slowbend keeps no place and sends none.
hearing-location-off = This version of Android finds probes only while the location is on. Probes that are known are heard without it.
hearing-radio-off = Bluetooth is off, so no probe is heard. Switch it on.
hearing-allow = Allow it
hearing-open-permissions = Open the permissions of Slowbend
hearing-open-location = Open the location settings
hearing-switch-on = Open the Bluetooth settings

## The notice while probes are heard.

hearing-notice = Listening to probes
hearing-notice-silent = { $count ->
    [one] A probe is silent
   *[other] { $count } probes are silent
}
# $place is a pit or a meat with its spot, $said what its probe said last.
hearing-notice-line = { $place }: { $said }
hearing-notice-read = { $temp } at { $at }
hearing-notice-unplaced = { $name }: no place yet
