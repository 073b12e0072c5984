import type { stakePlan as english } from '../../en/drawings/stake-plan.ts'

export const stakePlan: typeof english = {
  title: (run) => `Estacas de ${run}`,
  shows: (stakes, findings) =>
    `Plano de ${stakes} estacas con la cara de la baranda y el alineamiento en sus propias coordenadas${findings > 0 ? `, y ${findings} hallazgos` : ''}.`,
  stake: (number, along, purpose) => `estaca ${number}, a ${along} del poste 1: ${purpose}`,
  finding: (number, place) => `hallazgo ${number}: ${place}`,
  found: (number, place, what) => `hallazgo ${number}, ${place}: ${what}`,
}
