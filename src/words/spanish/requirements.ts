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
    'standing post': 'poste existente',
    terminal: 'terminal',
    'flared terminal': 'terminal abocinado',
    'trailing anchor': 'anclaje de salida',
    'buried end': 'extremo enterrado',
    'bridge end': 'extremo de puente',
  },
  patterns: [
    ['# to #', '# a #'],
    ['exactly #', 'exactamente #'],
    ['post #', 'poste #'],
    ['panel #', 'panel #'],
    ['splice #', 'empalme #'],
    ['# in to # in', '# in a # in'],
    ['# mm to # mm', '# mm a # mm'],
    ['# ft to # ft', '# ft a # ft'],
  ],
}
