import type { stakeList as english } from '../en/stake-list.ts'

export const stakeList: typeof english = {
  closure: (atLast, largest) =>
    `Por estación y desvío, y siguiendo la baranda desde el poste 1, se llega a la última estaca con ${atLast} de diferencia y a cualquiera con ${largest}.`,
  lessThan: (length) => `menos de ${length}`,
  notes: [
    'Cada punto es la cara de la baranda a escuadra con el centro de su poste.',
    'Los desvíos se miden desde el alineamiento, positivos a la derecha mirando hacia donde suben las estaciones.',
    'Las coordenadas son las del alineamiento; las longitudes de baranda se toman como longitudes en ellas, sin factor de escala entre cuadrícula y terreno.',
  ],
  roadBeyond: (broken) => `Más allá del tramo la vía está interrumpida: ${broken}.`,
  noHeights: 'No se dan cotas: no se conoce el perfil de la vía.',
  heights:
    'Las cotas son las de la superficie de la vía, prolongada con su pendiente transversal hasta la cara de la baranda, no las del terreno.',
}
