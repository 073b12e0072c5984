import type { detail as english } from '../../en/drawings/detail.ts'

export const detail: typeof english = {
  title: (end, run, unit) => `Detalle del ${ends[end]} extremo de ${run}: ${unit}`,
  description: (unit, callouts) => `Planta y alzado de: ${unit}, con lo que dice su ficha: ${callouts.join(' ')}`,
  callout: (number, words) => `${number}: ${words}`,
  measure: (end, unit) =>
    `Detalle del ${ends[end]} extremo, ${unit}: planta arriba, alzado abajo; distancias a lo largo de la baranda, desvíos y alturas están a escala, los signos de las piezas no.`,
  plan: 'PLANTA, lado del tránsito arriba. Desvíos de la línea del tramo a la cara de la baranda.',
  noFlare: 'Sin abocinado.',
  flare: (offset, shape, over, post) =>
    `Abocinado: ${offset} en el poste ${post}, ${shape === 'straight' ? 'recto' : 'parábola'}, en ${over}.`,
  finishGrade: 'rasante',
  sheet: (id, version, notice) => `Ficha ${id}, ${version}. ${notice}`,
  part: (name, rules) => `${name}: ${rules.join(' ')}`,
  post: (number, own) => `Poste ${number} (${own})`,
  posts: ([from, to], own) => `Postes ${from} a ${to} (${own[0]} a ${own[1]})`,
  postsAre: (posts, facts) => `${posts}: ${facts.join(', ')}.`,
  block: (hasBlock) => (hasBlock ? 'con bloque separador' : 'sin bloque separador'),
  railBolted: (bolted) =>
    bolted === 'notStated'
      ? 'perno de la baranda sin indicar'
      : bolted
        ? 'baranda atornillada'
        : 'baranda sin atornillar',
  hinge: (side) => `perno de la bisagra ${toward[side]}`,
  slots: (set, side) =>
    `baranda sujeta en las ranuras ${set === 'upper' ? 'superiores' : 'inferiores'}, del lado ${sideToward[side]}`,
  stub: (most) => `tocón de a lo más ${most} sobre la rasante`,
  soilTube: 'en un tubo de suelo',
  slottedPanel: (number, own, name) => `Panel ${number} (${own}): ${name}, con una fila de ranuras.`,
}

const ends = { first: 'primer', second: 'segundo' } as const
const toward = { upstream: 'hacia la cabeza', downstream: 'alejado de la cabeza' } as const
const sideToward = { upstream: 'de la cabeza', downstream: 'opuesto a la cabeza' } as const
