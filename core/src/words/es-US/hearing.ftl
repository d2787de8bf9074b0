### The screen of probes: what is heard, where it sits, and what keeps it from being heard.

hearing-title = Sondas
hearing-lead = Se escuchan sondas con los servicios Bluetooth Health Thermometer o Environmental Sensing. Una sonda que se queda puesta dice cuándo medir a mano; nunca da por hecha una carne.
hearing-look = Buscar sondas cerca
hearing-stop = Dejar de buscar
hearing-nearby = Encontradas cerca
hearing-none-yet = Todavía nada nuevo. Enciende la sonda y acércala a este teléfono.
hearing-keep = Escucharla
hearing-forget = Olvidar esta sonda en este teléfono
hearing-where = ¿Dónde está puesta?
hearing-elsewhere = No guardada en este teléfono; tal vez otro la escucha
# $name is what the probe calls itself, $sensor the number of its channel.
hearing-channel = { $name }, canal { $sensor }
hearing-unplaced = Sin lugar todavía: no cuenta para nada
hearing-unplaced-reads = { $temp }, { $age }. Sin lugar todavía: no cuenta para nada
hearing-link-nearby = Cerca, sin guardar
hearing-link-reaching = Ahora no se alcanza; se intenta de nuevo sin tocar nada
hearing-link-linked = Enlazada
hearing-link-foreign = No tiene ninguno de los dos servicios, o no habla por sí sola. Usa otra sonda
# $since is a time of day. Said of a pit or a meat.
hearing-gap = Una sonda puesta ahí calla desde { $since }

## What keeps probes from being found or heard, each with its button.

hearing-radio-missing = Este teléfono no tiene Bluetooth de bajo consumo: no escucha ninguna sonda. Mide a mano o usa otro teléfono.
hearing-radio-refused = Slowbend no puede usar Bluetooth, así que no escucha ninguna sonda. Permite “Dispositivos cercanos”.
hearing-location-refused = Esta versión de Android solo encuentra sondas con el permiso de ubicación. Slowbend no guarda ni envía ningún lugar.
hearing-location-off = Esta versión de Android solo encuentra sondas con la ubicación encendida. Las sondas conocidas se escuchan sin ella.
hearing-radio-off = Bluetooth está apagado, así que no se escucha ninguna sonda. Enciéndelo.
hearing-allow = Permitir
hearing-open-permissions = Abrir los permisos de Slowbend
hearing-open-location = Abrir los ajustes de ubicación
hearing-switch-on = Abrir los ajustes de Bluetooth

## The notice while probes are heard.

hearing-notice = Escuchando sondas
hearing-notice-silent = { $count ->
    [one] Una sonda calla
   *[other] { $count } sondas callan
}
# $place is a pit or a meat with its spot, $said what its probe said last.
hearing-notice-line = { $place }: { $said }
hearing-notice-read = { $temp } a { $at }
hearing-notice-unplaced = { $name }: sin lugar todavía
