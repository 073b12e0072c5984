import type { PacketPurpose } from '../../../protocol/packet-purposes.ts'
import type { manifest as english } from '../en/manifest.ts'

export const manifest: typeof english = {
  lineNote: (points, model) =>
    `${points} y ${model}: no se da la vía, así que el norte corre por la línea del tramo como si fuera recta, 0 en el origen, y el este a escuadra con ella, positivo a la derecha mirando hacia donde suben las estaciones. No son coordenadas de mapa.`,
  roadBeyond: (broken) => `la vía más allá del tramo: ${broken}`,
  cannotBeStaked: (place, expected) => `${place}: se esperaba ${expected}`,
  madeFor: (purpose) => `este paquete es para ${purposes[purpose]}`,
  nothingRead: 'todavía no se leyó nada',
  noRoad: 'el tramo no tiene lugar en una vía con coordenadas',
  noReferenceSystem: 'el tramo no tiene lugar en un sistema de referencia conocido',
  photo: (name) => `foto: ${name}`,
  photos: (names) => `fotos: ${names}`,
  noPhotos: 'no se pidieron fotos',
  photosElsewhere: 'no están donde se hizo este paquete',
}

const purposes: Readonly<Record<PacketPurpose, string>> = {
  crew: 'la cuadrilla',
  survey: 'el topógrafo',
  estimate: 'el presupuesto',
  record: 'el acta',
}
