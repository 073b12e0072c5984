import { acceptance } from './es/acceptance.ts'
import { answers } from './es/answers.ts'
import { common } from './es/common.ts'
import { fit } from './es/fit.ts'
import { hardware } from './es/hardware.ts'
import { instruments } from './es/instruments.ts'
import { key } from './es/key.ts'
import { layout } from './es/layout.ts'
import { need } from './es/need.ts'
import { ownWords } from './es/own-words.ts'
import { places } from './es/places.ts'
import { problems } from './es/problems.ts'
import { quantities } from './es/quantities.ts'
import { record } from './es/record.ts'
import { remedies } from './es/remedies.ts'
import { requirements } from './es/requirements.ts'
import { sheets } from './es/sheets.ts'
import { staking } from './es/staking.ts'
import { verdicts } from './es/verdicts.ts'
import type { Print } from './print.ts'
import { printIn, type Words } from './print-in.ts'
import { together } from './together.ts'

/**
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
const words: Words = {
  language: 'es',
  printers: together(
    acceptance,
    answers,
    common,
    fit,
    hardware,
    instruments,
    key,
    layout,
    need,
    places,
    problems,
    quantities,
    record,
    remedies,
    requirements,
    sheets,
    staking,
    verdicts,
  ),
  joints: { and: 'y', or: 'o' },
  own: ownWords,
}

const prints = { published: printIn(words, null), us: printIn(words, 'us'), metric: printIn(words, 'metric') }

/** Spanish; the same for the same units. */
export const spanish = (units: Print['units']): Print => prints[units ?? 'published']
