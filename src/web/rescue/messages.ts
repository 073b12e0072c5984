export interface Messages {
  readonly language: 'en' | 'es'
  readonly title: string
  readonly what: string
  readonly reading: string
  readonly nothing: string
  readonly shut: (reason: string) => string
  readonly found: (entries: number, photos: number) => string
  readonly save: string
  readonly bring: string
  readonly held: string
  readonly sheets: string
  readonly saveHeld: (name: string) => string
  readonly left: (count: number) => string
  readonly leftOne: (table: string, key: string | null, reason: string) => string
  readonly saveRest: string
  readonly kept: string
  readonly back: string
}

const en: Messages = {
  language: 'en',
  title: 'Save what lies on this device',
  what: 'This page works when the other one does not. It reads the store of this device piece by piece and saves all that can be read as one file. It changes and deletes nothing.',
  reading: 'Reading …',
  nothing: 'Nothing is stored on this device under this address.',
  shut: (reason) =>
    `The browser does not open its store: ${reason}. Close all tabs of this page, or restart the device, and try again. Do not clear the browser's data.`,
  found: (entries, photos) => `${entries} entries and ${photos} photos can be saved.`,
  save: 'Save the rescue file',
  bring:
    'Another device takes the file in: “More about this device” at the foot of the page. So does this one, once its page works again.',
  held: 'Files that wait on this device until they can be taken in:',
  sheets: 'Hardware sheets that were put on the shelf of this device:',
  saveHeld: (name) => `Save ${name}`,
  left: (count) => `${count} pieces could not be read or are not whole:`,
  leftOne: (table, key, reason) => `${table}${key === null ? '' : `, ${key}`}: ${reason}`,
  saveRest: 'Save the pieces that are not whole, as they lie',
  kept: 'Keep both files, and send them to whoever runs the server.',
  back: 'Back to the page',
}

const es: Messages = {
  language: 'es',
  title: 'Guardar lo que hay en este dispositivo',
  what: 'Esta página funciona cuando la otra no. Lee el almacén del dispositivo pieza por pieza y guarda en un archivo todo lo que se puede leer. No cambia ni borra nada.',
  reading: 'Leyendo …',
  nothing: 'No hay nada guardado en este dispositivo con esta dirección.',
  shut: (reason) =>
    `El navegador no abre su almacén: ${reason}. Cierre todas las pestañas de esta página, o reinicie el dispositivo, e inténtelo de nuevo. No borre los datos del navegador.`,
  found: (entries, photos) => `Se pueden guardar ${entries} anotaciones y ${photos} fotos.`,
  save: 'Guardar el archivo de rescate',
  bring:
    'Otro dispositivo recibe el archivo: «Más sobre este dispositivo», al pie de la página. También este, cuando su página vuelva a funcionar.',
  held: 'Archivos que esperan en este dispositivo hasta que se puedan incorporar:',
  sheets: 'Fichas de herrajes que se pusieron en el estante de este dispositivo:',
  saveHeld: (name) => `Guardar ${name}`,
  left: (count) => `${count} piezas no se pudieron leer o no están completas:`,
  leftOne: (table, key, reason) => `${table}${key === null ? '' : `, ${key}`}: ${reason}`,
  saveRest: 'Guardar las piezas incompletas, tal como están',
  kept: 'Conserve los dos archivos y envíelos a quien administra el servidor.',
  back: 'Volver a la página',
}

/** In the language chosen on the page; else in that of the device. */
export function messages(): Messages {
  return language().startsWith('es') ? es : en
}

const language = (): string => chosen('language') ?? navigator.language

/** What was chosen on the page, which this one does without. */
export function chosen(what: 'language' | 'light'): string | null {
  try {
    const one: unknown = JSON.parse(localStorage.getItem('lapwise/preferences') ?? '{}')[what]
    return typeof one === 'string' ? one : null
  } catch {
    return null
  }
}
