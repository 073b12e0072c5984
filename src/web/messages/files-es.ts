import type { FilesWords } from './files-en.ts'

const of = (one: string, many: string) => (n: number) => (n === 1 ? `1 ${one}` : `${n} ${many}`)

/** The same in Spanish. */
export const filesEs: FilesWords = {
  bring: {
    title: 'Traer lo registrado en otro lugar',
    why: 'Cada dirección tiene su propio almacén en un dispositivo. En un iPhone, también el navegador y la aplicación instalada. Si la dirección del servidor cambió, o la aplicación se instaló después, lo registrado antes está en el otro almacén, y pasa como un archivo.',
    there: 'Primero, donde se registró: en la dirección vieja, o en el navegador',
    thereHow: 'Abra esta página allí (se abre sin el servidor), guarde todo en un archivo y deje el almacén como está.',
    unsent: (n, photos) =>
      `En esta dirección ${n === 1 ? '1 registro' : `${n} registros`} y ${photos === 1 ? '1 foto' : `${photos} fotos`} están solo en este dispositivo.`,
    allSent: 'En esta dirección nada está solo en este dispositivo: de aquí no hay que llevar nada.',
    here: 'Después aquí, en la dirección nueva o en la aplicación instalada: incorpore el archivo',
    hereHow:
      'Primero se muestra lo que cambiaría. Lo que ya está aquí se queda, así que se puede incorporar dos veces.',
  },
  documents: {
    how: 'Se hace en este dispositivo. Lo que lo compone (12 MB) se trae con el primer documento y se conserva: desde entonces no hace falta red.',
    language: 'En',
    make: {
      record: 'Hacer el acta',
      summary: 'Hacer el resumen de dos páginas',
      'crew-sheet': 'Hacer la hoja de cuadrilla',
    },
    making: 'Haciendo el documento …',
    made: (file) => `${file} está hecho.`,
    notMade: 'El documento no se hizo.',
    archive:
      'Estos PDF llevan etiquetas y sus letras, pero no la marca de archivo (PDF/A), ni fotos. El acta de archivo y la carpeta salen del archivo de abajo: las hace un servidor que lo tome.',
  },
  title: 'Archivos que entran y salen',
  take: 'Incorporar un archivo de otro dispositivo',
  handOver: 'Entregar este tramo',
  handOverHow:
    'El tramo con todo lo registrado en él, también las fotos, en un archivo: para otro teléfono o la oficina, sin servidor.',
  handOverAll: 'Guardar todo en un archivo',
  making: 'Haciendo el archivo …',
  made: (size) => `El archivo está hecho: ${size}.`,
  lacks: (n) =>
    n === 1
      ? 'La imagen de 1 foto no está en este dispositivo ni la da ahora el servidor, y por eso no está en el archivo:'
      : `Las imágenes de ${n} fotos no están en este dispositivo ni las da ahora el servidor, y por eso no están en el archivo:`,
  lacksThere: (n) =>
    n === 1
      ? 'Habla de 1 foto cuya imagen no está ni en él ni aquí:'
      : `Habla de ${n} fotos cuyas imágenes no están ni en él ni aquí:`,
  share: 'Compartirlo',
  saveFile: 'Guardarlo',
  notShared: 'Aquí no se pudo compartir. Guárdelo y envíe el archivo.',
  notMade: 'El archivo no se hizo.',
  rescue: 'Si eso no funciona: guardar lo que se pueda leer',
  looking: (file) => `Mirando ${file} …`,
  failed: 'El archivo no se incorporó.',
  brings: (file) => `${file} traería:`,
  nothing: (file) => `${file} no trae nada que no esté ya aquí.`,
  newRun: (name) => `${name}: nuevo aquí`,
  knownRun: (name) => `${name}: ya está aquí`,
  unnamedRun: 'un tramo que no está ni aquí ni en el archivo',
  kinds: {
    run: of('versión de un tramo', 'versiones de tramos'),
    reading: of('lectura', 'lecturas'),
    photo: of('foto', 'fotos'),
    'photo-strokes': of('dibujo sobre una foto', 'dibujos sobre fotos'),
    'sign-off': of('firma', 'firmas'),
    'day-log': of('parte diario', 'partes diarios'),
    'locate-ticket': of('aviso de localización', 'avisos de localización'),
    archive: of(
      'nota de que un tramo se apartó o se trajo de vuelta',
      'notas de que tramos se apartaron o se trajeron de vuelta',
    ),
    'free-finding': of('hallazgo fuera de los requisitos', 'hallazgos fuera de los requisitos'),
    'free-finding-end': of('hallazgo cerrado', 'hallazgos cerrados'),
    assignment: of('asignación', 'asignaciones'),
  },
  pictures: (n) => (n === 1 ? 'la imagen de 1 foto' : `las imágenes de ${n} fotos`),
  already: (n) => `${n} que ya están aquí y quedan como están`,
  merge: 'Incorporarlo',
  drop: 'No incorporarlo',
  merging: 'Incorporando …',
  taken: (entries, photos, already) =>
    `Incorporado: ${entries} registros, ${photos} fotos; ${already} ya estaban aquí.`,
  willLeave: (n) => (n === 1 ? '1 parte no se puede incorporar:' : `${n} partes no se pueden incorporar:`),
  left: (n) =>
    n === 1
      ? '1 parte no se incorporó. Se guarda en este dispositivo, aparte:'
      : `${n} partes no se incorporaron. Se guardan en este dispositivo, aparte:`,
  leftEntry: (kind, by, at) => `${kind}, ${by}, ${at}`,
  leftOther: 'un registro que no se reconoce',
  leftPhoto: (hash) => `foto ${hash}`,
  problem: (place, expected, found) => `${place}: se esperaba ${expected}, hay ${found}`,
  more: (n) => `y ${n} más`,
  held: 'Guardados aquí, sin incorporar',
  heldNewer: (file, version) =>
    `${file}: hecho por un programa más nuevo, en la versión ${version} de su formato. Necesita una página más nueva: tráigala donde haya red y pruebe otra vez.`,
  heldRest: (file, n) => `${file}: ${n === 1 ? '1 parte' : `${n} partes`} de un archivo que no se pudo incorporar`,
  heldSize: (size, at) => `${size}, desde ${at}`,
  again: 'Probar otra vez',
  saveHeld: 'Guardarlo en un archivo',
  dropHeld: 'Borrarlo',
  sureDrop: 'Borrarlo de verdad: nadie más lo tiene',
  sheets: {
    title: 'Fichas de herrajes de este dispositivo',
    how: 'Una ficha que describe herrajes propios, u otra edición de una que ya está, se suma al estante de este dispositivo. Un tramo copia lo que usa: los cambios posteriores del estante no le llegan.',
    add: 'Poner una ficha en el estante desde su archivo',
    added: (file) => `${file} está en el estante.`,
    already: (file) => `${file} ya estaba en el estante.`,
    notAdded: (file) => `${file} no se puso en el estante.`,
    edition: (version) => `edición ${version}`,
    unreadable: 'Se conserva aquí, pero esta página no puede leerla:',
    drop: 'Quitarla del estante',
    sureDrop: 'Quitarla de verdad: los tramos que la usan la conservan',
    notDropped: 'No se quitó del estante.',
  },
}
