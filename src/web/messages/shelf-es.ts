import type { ShelfWords } from './shelf-en.ts'
import { shelfFormEs } from './shelf-form-es.ts'
import { shelfTextsEs } from './shelf-texts-es.ts'

/** The words of the shelf of hardware sheets in Spanish. */
export const shelfEs: ShelfWords = {
  title: 'Fichas de herrajes',
  how: 'Un tramo lleva consigo las fichas con que se dispuso: lo que cambia aquí no cambia ningún tramo.',
  back: 'Todas las fichas de herrajes',
  systems: 'Barreras',
  ends: 'Unidades de extremo',
  none: 'No hay a mano tal ficha.',
  noOwn: 'No se pudieron leer las fichas de este dispositivo.',
  own: 'propia',
  begun: 'cambiada, sin guardar',
  kinds: {
    longitudinal: 'barrera',
    terminal: 'terminal',
    'trailing anchor': 'anclaje de salida',
    'buried end': 'extremo enterrado',
    'bridge end': 'extremo de puente',
  },
  rail: (limits) => `parte superior de la baranda ${limits}`,
  edition: (version) => `edición ${version}`,
  notSaved: (version) => `edición ${version} con cambios aún sin guardar`,
  confirmed: (n, all) => `${n} de ${all} confirmados`,
  confirmedHow:
    'Confirmado es lo que alguien comprobó en un documento, o viene de uno publicado. Lo demás queda por comprobar por la agencia.',
  facts: {
    category: 'Clase',
    joins: 'Se une a',
    ends: 'Extremos que se le unen',
    gating: 'Traspasable',
    energyAbsorbing: 'Absorbe energía',
    crashworthy: 'Ensayado a choque',
  },
  groups: {
    rail: 'Baranda, ensayos y solapes',
    posts: 'Postes',
    panels: 'Paneles',
    gaps: 'Espacios, huecos y postes movidos',
    length: 'Longitud, abocinado, terreno y espacio',
    parts: 'Piezas y sus reglas',
    judging: 'Cómo se juzgan las fallas',
  },
  columns: { states: 'Lo que dice', source: 'Fuente', requires: 'Lo que se exige por ello' },
  unconfirmed: 'sin confirmar: de memoria',
  confirm: {
    begin: 'Confirmar números con un documento',
    end: 'Dejar de confirmar',
    title: 'Documento a la vista',
    how: 'Diga una vez qué documento tiene delante. Después dé la página de cada dato que confirma: desde entonces cuenta como publicado. Lo que el documento dice de otro modo no se confirma, se cambia.',
    document: 'Título',
    edition: 'Edición',
    by: 'Su nombre',
    on: 'Fecha',
    page: 'Página',
    confirm: 'Confirmar',
    missing: 'Diga primero qué documento, su edición, su nombre y la fecha.',
    checked: (by, page, on) => `página ${page}, comprobado por ${by}, ${on}`,
  },
  print: {
    open: 'Imprimir',
    language: 'En',
    lengths: 'Longitudes',
    units: { published: 'como se publicaron', us: 'en pies y pulgadas', metric: 'métricas' },
    of: {
      list: 'Lista por confirmar, en PDF',
      'pocket-card': 'Tarjeta de bolsillo, en PDF',
      'comparison-card': 'Tarjeta de comparación, en PDF',
    },
    how: 'La tarjeta de bolsillo lleva las comprobaciones en orden de recorrido, cada una con su figura bien y mal, en una hoja para doblar; la lista es para quien tiene el manual en la mano.',
    noSystem: 'No hay a mano ninguna barrera a la que se una, así que sus comprobaciones no se pueden disponer.',
    making: 'Haciendo el PDF …',
    made: (file) => `${file} está hecho.`,
    notMade: 'El PDF no se hizo.',
  },
  save: {
    title: 'Lo que hace guardar',
    begun: (version) =>
      `Cambiada desde la edición ${version}, en este dispositivo, y sin guardar. La edición de la que viene queda como está.`,
    isNew: 'Una ficha propia que aún no se ha guardado.',
    version: 'Su edición',
    wrong: (n) => (n === 1 ? 'Antes hay que corregir una cosa.' : `Antes hay que corregir ${n} cosas.`),
    save: 'Guardar como edición',
    notSaved: 'La edición no se guardó.',
    drop: 'Descartar los cambios',
    sureDrop: 'Descartarlos de verdad',
  },
  touched: {
    title: (n) =>
      n === 0
        ? 'Ningún tramo de este dispositivo la lleva'
        : n === 1
          ? '1 tramo de este dispositivo la lleva'
          : `${n} tramos de este dispositivo la llevan`,
    how: 'Ninguno se mueve: cada uno se juzga por la edición que lleva, hasta que alguien lo edite y tome el estante como esté entonces. Lo que llevan otros dispositivos no se sabe aquí.',
    unknown: 'No se pudieron leer los tramos que la llevan.',
    holds: (version) => `lleva la edición ${version}`,
    archived: 'guardado aparte',
    unsent: (n) => (n === 1 ? '1 anotación sin enviar' : `${n} anotaciones sin enviar`),
    tryOn: 'Probarla en una copia',
    copyOf: (name, version) => `${name}, probado con la edición ${version}`,
    notTried: 'No se pudo probar.',
  },
  compare: {
    backTo: 'Volver a la ficha',
    title: 'Comparar',
    link: 'Comparar con otra ficha o edición',
    same: 'Ambas dicen lo mismo.',
    what: 'De qué',
    kinds: {
      values: 'Otros valores',
      texts: 'Dicho con otras palabras, o dibujado o respondido de otro modo',
      source: 'Lo mismo de otra fuente',
    },
    notThere: 'no dice nada',
    otherWords: 'con otras palabras',
    besides: (what, one, other) => `${what}: ${one}; allí ${other}`,
  },
  newer: {
    tag: 'hay una edición más nueva',
    ships: (now, from) =>
      `El programa trae la edición ${now} de la ficha de la que partió esta, que era la edición ${from}. Lo que está en el estante de este dispositivo queda como está.`,
    held: (n, all) =>
      all === 0
        ? 'En esta no se confirmó nada.'
        : `${n} de ${all} confirmaciones valen allí también, porque dice lo mismo.`,
    begin: 'Empezar una edición desde ella, con lo confirmado',
    compare: 'Comparar con la edición más nueva',
    lost: (n) => `Confirmado antes y ya no: ${n}`,
    lostHow: 'Lo que dice otra cosa debe confirmarse de nuevo en un documento, o cambiarse.',
  },
  editions: {
    title: 'Ediciones',
    shipped: 'viene con el programa',
    onShelf: 'en el estante',
    added: (when) => `puesta aquí ${when}`,
    save: 'Guardar como archivo',
    compare: 'Comparar',
  },
  form: shelfFormEs,
  texts: shelfTextsEs,
}
