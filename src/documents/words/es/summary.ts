import type { summary as english } from '../en/summary.ts'

/** The summary of a record. What stands in braces is put in where the page is set. */
export const summary: typeof english = {
  title: 'Resumen del acta de inspección',
  how: 'Lo que decide, en dos páginas. Cada requisito con sus lecturas está en el acta misma, a la que nombra su huella.',
  code: 'Código QR',
  codeHolds: 'tramo y huella del acta',
  moreFindings: 'En el acta hay {count} hallazgos más.',
  moreUnproven: 'En el acta hay {count} líneas más de lo que está sin probar.',
  stripElsewhere: 'El tramo es demasiado largo para dibujarlo aquí: su franja está en el acta.',
}
