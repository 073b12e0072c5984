import type { SpanishWords } from './spanish-words.ts'

/** Why the server did not do what it was asked. */
export const serverAnswerWords: SpanishWords = {
  sentences: {
    'The packet cannot be made.': 'El paquete no se puede hacer.',
    'This packet is no longer kept. Make it again.': 'Este paquete ya no se guarda. Hágalo de nuevo.',
    'The run cannot be laid out.': 'El tramo no se puede disponer.',
    'The request is not as it has to be.': 'La petición no está como debe.',
    'Lapwise has a fault; its log says more.': 'Lapwise tiene una falla; su registro dice más.',
    'something else is stored under its id': 'con su id está guardada otra cosa',
    'the store cannot hold it unchanged': 'el almacén no lo puede guardar sin cambios',
    'its id is far ahead of those of its run': 'su id está muy por delante de los de su tramo',
    'What was recorded at the run cannot be read.': 'Lo anotado en el tramo no se puede leer.',
    'The stored run cannot be read.': 'El tramo guardado no se puede leer.',
    'The stored readings cannot be read.': 'Las lecturas guardadas no se pueden leer.',
    'its run cannot be read': 'su tramo no se puede leer',
    'the readings of its run cannot be read': 'las lecturas de su tramo no se pueden leer',
    'The request is not one JSON document.': 'La petición no es un documento JSON.',
    'This device was not let in, or was shut out.': 'A este dispositivo no se le dio entrada, o se le cerró el paso.',
    'Nothing is written that comes unencrypted over a network: open the address that begins with https.':
      'No se escribe nada que llegue sin cifrar por una red: abra la dirección que empieza por https.',
    'it is not a reading of this run': 'no es una lectura de este tramo',
  },
  patterns: [
    ['This server does not answer to _.', 'Este servidor no responde por _.'],
    ['Pages of _ may not ask this server.', 'Las páginas de _ no pueden consultar este servidor.'],
    ['There is no photo _.', 'No hay ninguna foto _.'],
    [
      'What arrived has the sha256 _. It was not kept; send it anew.',
      'Lo que llegó tiene el sha256 _. No se guardó; envíelo de nuevo.',
    ],
    ['What arrived is not $: $.', 'Lo que llegó no es $: $.'],
    ['There is no run _.', 'No hay ningún tramo _.'],
    ['there is no project _', 'no hay ningún proyecto _'],
    ['There is nothing at _.', 'No hay nada en _.'],
    ['The strip has # sheets.', 'La franja tiene # hojas.'],
    ['_ is not a run file that can be used.', '_ no es un archivo de tramo que se pueda usar.'],
    ['The run in _ cannot be laid out.', 'El tramo de _ no se puede disponer.'],
    ['The run was not stored: $.', 'El tramo no se guardó: $.'],
    ['what is stored under its id differs in _', 'lo guardado con su id difiere en _'],
    ['The store does not answer: _', 'El almacén no responde: _'],
    [
      'The store does not answer: _. Nothing is lost; try again.',
      'El almacén no responde: _. No se pierde nada; intente de nuevo.',
    ],
  ],
}
