import type { pocketCard as english } from '../en/pocket-card.ts'

/** The checks of a sheet for the pocket. */
export const pocketCard: typeof english = {
  title: 'Tarjeta de bolsillo',
  rail: (limits) => `Parte superior de la baranda: ${limits} sobre la rasante terminada`,
  how: 'Imprima por las dos caras, volteando por el lado corto; doble por las líneas punteadas.',
  notRecord: 'Esta tarjeta ayuda a mirar. No es un registro: lo leído se anota donde se guarda el tramo.',
  notConfirmedMeans: 'está donde un límite es de memoria: nadie lo ha comprobado en un documento.',
  covered: 'Antes de cubrirlo',
  inOrder: 'En orden de recorrido',
  oneOf: 'Uno de estos, según la disposición:',
  right: 'Bien.',
  wrong: 'Mal:',
  everywhere: {
    post: 'postes',
    panel: 'paneles',
    space: 'espacios entre postes',
    splice: 'empalmes',
    unit: 'la unidad de extremo',
    run: 'el tramo',
  },
}
