# Una carne fuera del fuego de la que ninguna lectura muestra el mínimo publicado. $what es una lista de nombres.

job-read-or-back = Mídela a mano o regrésala al fuego
ring-read-or-back = { $what }: mide a mano o regresa al fuego
ring-read-or-back-detail = Está fuera del fuego y ninguna lectura muestra su mínimo publicado. La seguridad va primero; las reglas locales y la práctica con licencia pueden pedir más.
because-read-or-back = Está fuera del fuego. { $safety }
