import type { frame as english } from '../en/frame.ts'

export const frame: typeof english = {
  printed: 'Impreso',
  printedBy: (at, by) => `${at} por ${by}`,
  hash: 'Huella del acta',
  page: 'página',
  of: 'de',
  notConfirmed: 'SIN CONFIRMAR',
  verdicts: {
    meets: 'cumple',
    fails: 'no cumple',
    'too close': 'demasiado justo',
    unread: 'sin leer',
    'does not apply': 'no aplica',
  },
  confirmations: { published: 'publicado', 'common practice': 'práctica común', 'from memory': 'de memoria' },
}
