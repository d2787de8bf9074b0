### Probes over Bluetooth: what was not taken and what to do.

# $characteristic is a number that Bluetooth gives to a kind of message, such as 0x2A1C.
probe-unread = The Bluetooth characteristic { $characteristic } is not one that is read here. Use a probe that has the Health Thermometer or the Environmental Sensing service.
probe-length = The probe sent a message of { $got } bytes instead of { $wanted }. Switch it off and on; if it goes on, use another probe.
probe-no-such-time = The probe sent a time that no calendar or clock has. Set the probe's clock, or switch it off and on.
# $time is what the probe's clock said, such as 2026-07-04 15:30:00.
probe-clock-off = The probe's clock says { $time }, which is still to come or more than a day ago. Set it to the time of this place.
probe-too-hot = The probe says more than 1,472 °F (800 °C), which nothing here reaches. Check the probe and its wire.
probe-too-cold = The probe says less than −76 °F (−60 °C), which nothing here reaches. Check the probe and its wire.
probe-not-hex = “{ $typed }” is not bytes in hexadecimal. Write two digits for each byte, such as 00 6C 01 00 FF.
probe-not-a-characteristic = “{ $typed }” is not the number of a characteristic. Write its four hexadecimal digits, such as 2A1C.

## A probe that says it has no temperature.

probe-none-not-a-number = The probe has no reading. Check that its tip is plugged in all the way.
probe-none-resolution = The probe cannot write down what it reads. Wait for its next reading.
probe-none-above = The probe is hotter than it can measure. Check where its tip is.
probe-none-below = The probe is colder than it can measure. Check where its tip is.
probe-none-reserved = The probe sent a value without a meaning. Wait for its next reading; if it goes on, switch it off and on.
probe-none-not-known = The probe does not know the temperature yet. Check that its tip is plugged in all the way, and wait.
probe-none-not-carried = This message of the probe is not about a temperature. Nothing needs to be done.
