import { landedTexts } from '../es/landed-sheets.ts'
import { nameWords } from './names.ts'
import { requirementWords } from './requirements.ts'
import type { SpanishWords } from './spanish-words.ts'
import { testAndEndWords } from './tests-and-ends.ts'

/**
 * All that the model says, part by part.
 *
 * A term has one word, here and in the messages of the page, as crews on road work in the Southwest and in Mexico use it:
 * rail baranda; post poste; offset block bloque separador; splice empalme; lap solape; panel panel; bolt tornillo (of a
 * hinge: perno de bisagra); nut tuerca; slot ranura; stub muñón; impact head cabeza de impacto; anchor cable cable de
 * anclaje; bearing plate placa de apoyo; bracket soporte; terminal terminal; trailing anchor anclaje de salida; flare
 * abocinado; run tramo; layout disposición; post space espacio; gap hueco; nested doble; finish grade rasante terminada;
 * foreslope talud descendente; backslope talud ascendente; shoulder acotamiento; curb bordillo; edge of travelled way
 * borde de la calzada; traffic tránsito; adjacent contiguo; opposing contrario; upstream aguas arriba; clear zone zona
 * despejada; shy line línea de recelo; runout length longitud de salida de la vía; need necesidad; crashworthy ensayado a
 * choque; gating traspasable; letting adjudicación; hardware herrajes; sheet ficha; reading lectura; finding hallazgo;
 * record acta; strip franja; string line hilo.
 */
export const tables: readonly SpanishWords[] = [
  requirementWords,
  { sentences: landedTexts, patterns: [] },
  nameWords,
  testAndEndWords,
]
