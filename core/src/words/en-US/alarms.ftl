### Alarms: what rings, and what it asks for.
