import type { places as english } from '../en/places.ts'

export const places: typeof english = {
  numbered: {
    post: (numbers, isOne) => `${isOne ? 'poste' : 'postes'} ${numbers}`,
    space: (numbers, isOne) => `${isOne ? 'espacio tras el poste' : 'espacios tras los postes'} ${numbers}`,
    panel: (numbers, isOne) => `${isOne ? 'panel' : 'paneles'} ${numbers}`,
    splice: (numbers, isOne) => `${isOne ? 'empalme' : 'empalmes'} ${numbers}`,
  },
  onRoad: (station, offset, unit) => `estación ${station}, desvío ${offset} ${unit}`,
  fromDatum: {
    at: 'en el origen',
    upstream: (along) => `${along} de baranda aguas arriba del origen`,
    downstream: (along) => `${along} de baranda aguas abajo del origen`,
  },
  fromTo: (from, to) => `${from} a ${to}`,
}
