import type { quantities as english } from '../en/quantities.ts'

export const quantities: typeof english = {
  title: 'Cantidades',
  boundaries: (begins, ends) => `El tramo empieza ${begins} y termina ${ends}, medido por la cara de la baranda.`,
  rounding: (isPanel, step) =>
    isPanel
      ? `Se paga al panel de ${step} más cercano, los medios hacia arriba.`
      : `Se paga al múltiplo de ${step} más cercano, los medios hacia arriba.`,
  sections: {
    length: 'Longitud',
    ends: 'Extremos',
    posts: 'Postes y bloques',
    panels: 'Paneles',
    bolts: 'Tornillos',
    spares: 'Repuestos',
  },
  paid: (length) => `${length} por pagar`,
  each: '{amount} piezas',
  item: 'Artículo',
  amount: 'Cantidad',
  pieces: 'Piezas',
  source: 'Fuente, nota',
  materials: {
    title: 'Lista de materiales',
    how: 'Anote lo que está laminado, estampado o etiquetado en cada pieza antes de colgarla: después no se puede leer. No se anota el material que ya está en pie o colgado.',
    rail: 'Baranda',
    none: 'Nada por entregar.',
    where: 'Dónde',
    item: 'Artículo',
    count: 'Pzas',
    heat: 'Marca de colada',
    coating: 'Marca de recubrimiento',
    checkedBy: 'Revisado por',
    bundles: 'Extremos, postes, bloques y tornillos',
    bundle: 'Marca o etiqueta del atado',
    receivedBy: 'Recibido por',
    signature: 'Firma',
    date: 'Fecha',
  },
}
