### Units: temperatures and weights. Numbers come written out as text.

temperature-fahrenheit = { $degrees } °F
temperature-celsius = { $degrees } °C
temperature-span-fahrenheit = { $low }–{ $high } °F
temperature-span-celsius = { $low }–{ $high } °C
weight-pounds = { $pounds } lb
weight-ounces = { $ounces } oz
weight-pounds-ounces = { $pounds } lb { $ounces } oz
weight-kilograms = { $kilograms } kg
weight-grams = { $grams } g
