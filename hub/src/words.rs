//! The words of the pages themselves: labels of forms and of the frame. What is said about a cook, core says.
//!
//! Each line has both languages, so that neither can lack one.

use slowbend_core::{log::PitKind, words::Locale};

macro_rules! words {
    ($($name:ident: $en:literal / $es:literal,)*) => {
        /// All words in one language.
        pub struct HubWords { $(#[allow(missing_docs, reason = "named as they read")] pub $name: &'static str),* }
        const EN: HubWords = HubWords { $($name: $en),* };
        const ES: HubWords = HubWords { $($name: $es),* };
        #[cfg(test)]
        const BOTH: &[(&str, &str, &str)] = &[$((stringify!($name), $en, $es)),*];
    };
}

/// The words of `locale`.
pub const fn words(locale: Locale) -> &'static HubWords {
    match locale {
        Locale::EnUs => &EN,
        Locale::EsUs => &ES,
    }
}

words! {
    skip: "Skip to what is due" / "Saltar a lo que toca",
    pages: "Pages" / "Páginas",
    now: "Now" / "Ahora",
    write: "Write down" / "Anotar",
    timeline: "What happened" / "Lo que pasó",
    settings: "Settings" / "Ajustes",
    stopped: "This could not be done" / "No se pudo hacer",
    no_page: "There is no page at this address. Go to the start and choose the cook there." /
        "No hay ninguna página en esta dirección. Ve al inicio y elige ahí la cocción.",
    to_start: "To the start" / "Al inicio",
    not_recorded: "Not recorded." / "No se anotó.",
    already: "This was recorded before. Nothing was added." / "Esto ya estaba anotado. No se agregó nada.",
    invented: "Demo: all of it is invented. Its clock is its own, so that lunch is at two." /
        "Demostración: todo es inventado. Su reloj es propio, para que se coma a las dos.",
    leave_demo: "Back to your own cooks" / "Volver a tus cocciones",
    demo_under_way: "A demo is under way: go to it" / "Hay una demostración en curso: ir a ella",
    demo_anew: "Begin the demo anew" / "Empezar de nuevo la demostración",
    no_demo: "No demo is under way. Go to the start and begin it there." /
        "No hay ninguna demostración en curso. Ve al inicio y empiézala ahí.",
    too_large: "That is too long: a form takes up to 256 KB. Shorten it and send it again." /
        "Es demasiado largo: un formulario admite hasta 256 KB. Acórtalo y envíalo otra vez.",
    file_too_large: "That file is too large: up to 32 MB are taken here. Take it with the command slowbend readings import." /
        "Ese archivo es demasiado grande: aquí se admiten hasta 32 MB. Usa el comando slowbend readings import.",
    cautions: "Cautions" / "Precauciones",
    rings_while_open: "This page rings only while it is open, on a device that is awake, and once its sound was tapped on at the top." /
        "Esta página suena solo mientras está abierta, en un aparato despierto, y tras tocar arriba su sonido.",
    sound: "Sound is off" / "Sonido apagado",
    sound_on: "Sound is on" / "Sonido activado",
    no_script: "Scripts are off, so this page does not ring. “Now” loads itself anew each minute; reload the other pages to see what is new." /
        "Los scripts están desactivados, así que esta página no suena. «Ahora» se carga de nuevo cada minuto; recarga las demás para ver lo nuevo.",
    away: "The home post cannot be reached. Is the program still running? This page tries again by itself." /
        "No se alcanza el puesto de casa. ¿Sigue corriendo el programa? Esta página lo intenta otra vez sola.",
    show: "Show" / "Mostrar",
    meats: "Meats" / "Carnes",
    pits: "Pits" / "Asadores",
    next: "After that" / "Después",
    watch: "The watch" / "La guardia",
    at_hand: "At hand" / "A la mano",
    check: "Check it" / "Revisarla",
    check_next: "Next check:" / "Próxima revisión:",
    did: "What was done" / "Lo que se hizo",
    facts: "Facts" / "Datos",
    checks: "Checks so far" / "Revisiones hasta ahora",
    back_to_meat: "Back to the meat" / "Volver a la carne",
    thermometer: "Thermometer" / "Termómetro",
    other_thermometer: "One that is not listed" / "Uno que no está en la lista",
    left_in: "Read from a probe that stays in, not by hand" / "Leído de una sonda que se queda adentro, no a mano",
    when_done: "When" / "Cuándo",
    earlier: "Earlier" / "Más atrás",
    new_here: "New here?" / "¿Primera vez aquí?",
    change: "Change it" / "Cambiarlo",
    demo: "Or watch the demo" / "O mira la demostración",
    past: "Pit book" / "Libro del asador",
    cut: "Cut" / "Corte",
    no_meat: "None" / "Ninguno",
    more_meats: "More meats" / "Más carnes",
    rows_hint: "One line for each slab (rack), half or whole cut. More can be added at any time." /
        "Una línea por cada costillar, mitad o corte entero. Se pueden agregar más en cualquier momento.",
    no_pit: "No pit yet" / "Aún sin asador",
    pit_above: "The new pit" / "El nuevo",
    new_pit: "A pit that is not listed" / "Un asador que no está en la lista",
    first_pit: "Your pit" / "Tu asador",
    first_pit_hint: "What it all cooks in. It is remembered for the next cook." /
        "Donde se asa todo. Queda guardado para la próxima cocción.",
    pit: "Pit" / "Asador",
    pit_name: "Name, if any" / "Nombre, si tiene",
    pit_kind: "Kind" / "Tipo",
    kind_stick_burner: "Wood in a firebox at the side" / "Leña en caja lateral",
    kind_kettle: "Kettle" / "Asador de tapa redonda",
    kind_drum: "Drum" / "Tambo",
    kind_ceramic: "Ceramic" / "Cerámica",
    kind_cabinet: "Cabinet" / "Gabinete",
    kind_pellet: "Pellet" / "Pellets",
    kind_electric: "Electric" / "Eléctrico",
    form: "Before the pit" / "Antes del asador",
    form_intact: "As it came, whole" / "Como vino, entera",
    form_injected: "Injected" / "Inyectada",
    form_tenderised: "Needled or bladed" / "Ablandada con agujas o cuchillas",
    form_ground: "Ground" / "Molida",
    form_rolled: "Rolled and tied" / "Enrollada y atada",
    form_stuffed: "Stuffed" / "Rellena",
    cadence: "Wetting" / "Mojado",
    cadence_usual: "As this cut usually gets" / "Como suele llevar este corte",
    cadence_none: "None" / "Ninguno",
    cadence_spritz: "Spritz, every 60 minutes" / "Rociar, cada 60 minutos",
    cadence_mop: "Mop, every 30 minutes" / "Mopear, cada 30 minutos",
    write_down: "Write it down" / "Anotarlo",
    note: "A note" / "Una nota",
    note_text: "What is to be remembered" / "Lo que hay que recordar",
    read_with: "Read with" / "Leída con",
    reading: "A temperature read by hand" / "Una temperatura leída a mano",
    place: "Where" / "Dónde",
    temp: "Temperature" / "Temperatura",
    spot: "Spot in the meat" / "Punto de la carne",
    spot_in_pit: "Level or spot" / "Nivel o lugar",
    feed: "Fuel" / "Combustible",
    feed_what: "What and how much" / "Qué y cuánto",
    vent: "A vent" / "Una entrada de aire",
    vent_how: "How it stands now" / "Cómo quedó",
    move_meat: "A meat was moved" / "Se movió una carne",
    meat: "Meat" / "Carne",
    opening: "An opening" / "Una apertura",
    opening_hint: "All that was done while the pit was open." / "Todo lo que se hizo con el asador abierto.",
    did_nothing: "Nothing" / "Nada",
    did_wet: "Mopped or spritzed" / "Mopeada o rociada",
    did_turn: "Turned" / "Volteada",
    did_glaze: "Glazed" / "Glaseada",
    more_of_it: "More about this meat" / "Más sobre esta carne",
    split: "Cut in parts" / "Partirla",
    split_names: "Names of the parts, with commas: flat, point" / "Nombres de las partes, con comas: plana, punta",
    join: "Put together with" / "Juntarla con",
    join_name: "Name of them together" / "Nombre de todas juntas",
    join_one: "Choose at least one other meat." / "Elige al menos otra carne.",
    pull_at: "Taken off at" / "Se saca a los",
    weight: "Weight" / "Peso",
    new_name: "Name" / "Nombre",
    file: "Readings from a file" / "Lecturas de un archivo",
    file_hint: "A CSV file of an instrument: choose it, or paste its rows." /
        "Un archivo CSV de un instrumento: elígelo, o pega sus filas.",
    file_choose: "File" / "Archivo",
    file_rows: "Rows" / "Filas",
    file_empty: "There are no rows. Paste them, the line with the names of the columns first." /
        "No hay filas. Pégalas, primero la línea con los nombres de las columnas.",
    file_unit: "Unit, where the file does not say" / "Unidad, si el archivo no la dice",
    file_says: "The file says" / "El archivo la dice",
    file_first: "In dates stands first" / "En las fechas va primero",
    file_day: "The day" / "El día",
    file_month: "The month" / "El mes",
    file_time_column: "Column of times, from 1" / "Columna de las horas, desde 1",
    file_temp_columns: "Columns of temperatures, such as 2,4" / "Columnas de temperaturas, como 2,4",
    file_start: "When it began, where times count from a start" / "Cuándo empezó, si las horas cuentan desde un inicio",
    file_counts: "Plain numbers count" / "Los números solos cuentan",
    file_seconds: "Seconds" / "Segundos",
    file_minutes: "Minutes" / "Minutos",
    file_more: "Where the file leaves something open" / "Si el archivo deja algo abierto",
    file_column_unread: "Columns are numbers counted from 1, such as 2,4." / "Las columnas son números desde 1, como 2,4.",
    file_taken: "Readings taken" / "Lecturas guardadas",
    file_doubled: "known before" / "ya conocidas",
    file_refused: "refused" / "rechazadas",
    meat_name: "Its name, if it has one" / "Su nombre, si tiene",
    add_meat: "Another meat" / "Otra carne",
    add_dish: "Another dish" / "Otro platillo",
    dish_name: "Its name" / "Su nombre",
    dish_held: "Held" / "Se guarda",
    dish_hot: "Hot" / "Caliente",
    dish_cold: "Cold" / "Frío",
    serve: "On the table" / "A la mesa",
    serve_at: "When" / "Cuándo",
    people: "Who eats" / "Quiénes comen",
    people_count: "How many" / "Cuántos",
    people_unread: "How many eat is not a whole number. Type one such as 14." /
        "Cuántos comen no es un número entero. Escribe uno como 14.",
    sleep: "Sleep" / "Dormir",
    sleep_until: "Until, such as 5:30 am" / "Hasta, como 5:30 am",
    take_watch: "Take the watch" / "Tomar la guardia",
    watch_note: "One line on the pit" / "Una línea sobre el asador",
    probe: "A probe" / "Una sonda",
    probe_source: "Instrument" / "Instrumento",
    probe_sensor: "Channel" / "Canal",
    choose: "Choose one of the choices on the page." / "Elige una de las opciones de la página.",
    nothing_tried: "Nothing was tried. Choose what came of at least one test, or type a temperature." /
        "No se probó nada. Elige el resultado de al menos una prueba, o escribe una temperatura.",
    device: "This device" / "Este aparato",
    device_name: "What others see it called" / "Cómo lo ven los demás",
    zone: "Time zone" / "Zona horaria",
    zone_unread: "That time zone is not known here. Type one such as America/Chicago." /
        "Esa zona horaria no se conoce aquí. Escribe una como America/Mexico_City.",
    field_unread: "That is not a whole number. Type digits only, such as 60." /
        "Eso no es un número entero. Escribe solo cifras, como 60.",
    saved: "Saved." / "Guardado.",
    low: "From" / "Desde",
    high: "To" / "Hasta",
    band: "Held between" / "Se mantiene entre",
    band_minutes: "Rings after this many minutes outside" / "Suena tras tantos minutos fuera",
    stale_button: "This button is no longer known. Reload the page and use the one that is there now." /
        "Este botón ya no se conoce. Recarga la página y usa el que esté ahora.",
}

/// The kinds of pits, to be chosen from.
pub fn pit_kinds(words: &HubWords) -> impl Iterator<Item = (String, &str)> {
    [
        (PitKind::Kettle, words.kind_kettle),
        (PitKind::Drum, words.kind_drum),
        (PitKind::StickBurner, words.kind_stick_burner),
        (PitKind::Ceramic, words.kind_ceramic),
        (PitKind::Cabinet, words.kind_cabinet),
        (PitKind::Pellet, words.kind_pellet),
        (PitKind::Electric, words.kind_electric),
    ]
    .into_iter()
    .map(|(kind, name)| (crate::forms::name_of(&kind), name))
}

/// What may have been done to a meat.
pub fn forms(words: &HubWords) -> impl Iterator<Item = (String, &str)> {
    use slowbend_core::safety::Form;
    [
        (Form::Intact, words.form_intact),
        (Form::Injected, words.form_injected),
        (Form::Tenderised, words.form_tenderised),
        (Form::Ground, words.form_ground),
        (Form::Rolled, words.form_rolled),
        (Form::Stuffed, words.form_stuffed),
    ]
    .into_iter()
    .map(|(form, name)| (crate::forms::name_of(&form), name))
}

/// How often a meat may be wetted.
pub fn cadences(words: &HubWords) -> impl Iterator<Item = (String, &str)> {
    [
        ("", words.cadence_usual),
        ("none", words.cadence_none),
        ("spritz", words.cadence_spritz),
        ("mop", words.cadence_mop),
    ]
    .into_iter()
    .map(|(value, name)| (value.to_owned(), name))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Words that both languages write alike.
    const ALIKE: [&str; 1] = ["kind_pellet"];

    #[test]
    fn no_line_was_left_in_english() {
        for (name, english, spanish) in BOTH {
            assert!(english != spanish || ALIKE.contains(name), "{name}");
            assert!(!english.is_empty() && !spanish.is_empty(), "{name}");
        }
    }

    #[test]
    fn screens_use_the_words_of_the_trade() {
        for (name, english, _) in BOTH {
            for word in [
                "look", "piece", "ledger", "board", "hub", "verdict", "pitside",
            ] {
                let said = english
                    .split(|c: char| !c.is_alphabetic())
                    .any(|part| part.eq_ignore_ascii_case(word));
                assert!(!said, "{name} says {word}");
            }
        }
    }
}
