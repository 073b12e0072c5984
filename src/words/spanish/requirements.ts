import type { SpanishWords } from './spanish-words.ts'

/** Instruments, and the cautions under every page. */
export const requirementWords: SpanishWords = {
  sentences: {
    'steel tape': 'cinta de acero',
    'digital level': 'nivel digital',
    'angle gauge': 'medidor de ángulos',
    'torque wrench': 'llave dinamométrica',
    'cable tension gauge': 'medidor de tensión de cables',
    'counted by eye': 'contado a la vista',
    'tape and level': 'cinta y nivel',
    'string line and tape': 'hilo y cinta',
    'total station': 'estación total',
    'GNSS receiver, fast static or real-time': 'receptor GNSS, estático rápido o en tiempo real',
    'not stated': 'no se dice',
    // The cautions under every page.
    "This is not a design and not a crash test. The agency's standard drawing and specification and the terminal maker's manual in force at letting govern; where they differ from what is shown here, stop and ask the engineer.":
      'Esto no es un diseño ni un ensayo de choque. Rigen el plano estándar y la especificación de la agencia y el manual del fabricante del terminal vigentes en la adjudicación; donde difieran de lo que se muestra aquí, deténgase y pregunte al ingeniero.',
    'The shipped hardware sheets are examples; replace them by sheets written from the documents in force. A limit marked "from memory" has not been checked against any document.':
      'Las fichas de herrajes incluidas son ejemplos; cámbielas por fichas hechas con los documentos vigentes. Un límite marcado "de memoria" no se cotejó con ningún documento.',
    'Acceptance is signed by a person, an engineer licensed where the law asks for one; this tool signs nothing.':
      'La aceptación la firma una persona, un ingeniero con licencia donde la ley lo pide; esta herramienta no firma nada.',
    'A value within the uncertainty of its measurement is not a pass.':
      'Un valor dentro de la incertidumbre de su medición no es un cumplimiento.',
    'Call the one-call utility service before any post is driven or pulled, and wait for its marks.':
      'Llame al servicio de localización de servicios enterrados antes de hincar o arrancar un poste, y espere sus marcas.',
    'Work behind the traffic control that the plan calls for; never kneel in or beside a live lane to read a height.':
      'Trabaje tras el control de tránsito que pide el plano; nunca se arrodille en un carril abierto ni junto a él para leer una altura.',
    "An anchor cable is under load, driven posts and cut edges injure: wear the protection the work calls for. An exposed end or open gap at day's end must be protected.":
      'Un cable de anclaje está bajo carga, los postes hincados y los bordes cortados hieren: use la protección que pide el trabajo. Un extremo expuesto o un hueco abierto al final del día tiene que protegerse.',
    terminal: 'terminal',
    'flared terminal': 'terminal abocinado',
    'trailing anchor': 'anclaje de salida',
    'buried end': 'extremo enterrado',
    'bridge end': 'extremo de puente',
  },
  patterns: [
    ['post #', 'poste #'],
    ['panel #', 'panel #'],
    ['splice #', 'empalme #'],
    ['# in to # in', '# in a # in'],
    ['# mm to # mm', '# mm a # mm'],
    ['# ft to # ft', '# ft a # ft'],
  ],
}
