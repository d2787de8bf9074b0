### Common: lists and what many screens share.

list-last = { $list } y { $item }
list-last-alike = { $list } e { $item }
list-more = { $list }, { $item }
list-apart = { $list }; { $item }
zone-unknown = La zona horaria “{ $zone }” no se conoce aquí, así que las horas se muestran en UTC. Elige una zona en ajustes.
