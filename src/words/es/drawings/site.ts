import type { site as english } from '../../en/drawings/site.ts'

export const site: typeof english = {
  plan: (hazards) => `Plano: barrera para ${hazards}`,
  section: (station) => `Sección transversal en la estación ${station}`,
  road: (speed, volume, traffic, lanes, wide, shoulder) =>
    `Velocidad de diseño ${speed}, ${volume} vehículos por día, ${trafficWords[traffic]}, ${lanes} ${lanes === 1 ? 'carril' : 'carriles'} de ${wide}, acotamiento ${shoulder}`,
  upStation: 'Las estaciones crecen hacia la derecha.',
  lookingUpStation: 'Visto en el sentido de las estaciones.',
  toScale: 'A escala: vea la barra.',
  acrossLarger: (times) =>
    `Longitudes a lo largo de la vía a escala: vea la barra. A TRAVÉS DE LA VÍA, DIBUJADO ${times} VECES MÁS GRANDE.`,
  heightsLarger: (times) => `LAS ALTURAS ESTÁN DIBUJADAS ${times} VECES MÁS GRANDES.`,
  barAcross: (length) => `${length} a través`,

  planShows: (from, to, side) =>
    `Plano de la vía desde la estación ${from}, a la izquierda, hasta ${to}, a la derecha; peligros a la ${sides[side]}.`,
  sectionShows: (station, side) =>
    `Sección transversal en el sentido de las estaciones, en la estación ${station}, borde de la vía a la ${sides[side]}.`,
  hazards: (hazards) => `Peligros: ${hazards.join('; ')}.`,
  hazardAt: (hazard, from, to, near, far) =>
    far === null
      ? `${hazard}, estación ${from} a ${to}, de ${near} del borde a más allá de la zona despejada`
      : `${hazard}, estación ${from} a ${to}, de ${near} a ${far} del borde`,
  hazardsHere: (hazards) => (hazards.length > 0 ? `Peligros aquí: ${hazards.join(', ')}.` : 'Aquí no hay peligro.'),
  barrierStands: (offset) => `La cara de la barrera está a ${offset} del borde de la calzada.`,
  needEnds: (direction, length, hazard, lateral) =>
    `Para la ${directions[direction]} la necesidad acaba a ${length} de ${hazard ?? 'el peligro'}, a ${lateral} del borde.`,
  fromEdge: (laterals) => `Desde el borde de la calzada: ${laterals.join('; ')}.`,
  slopesNotStated: (withoutSuperelevation) =>
    `Las pendientes de calzada y acotamiento no están indicadas; se dibujan según la práctica común${withoutSuperelevation ? ', sin peralte' : ''}.`,
  heightsNotStated: 'Las alturas de los peligros no están indicadas; se dibujan iguales.',
  noBarrier: 'En esta estación no hay barrera.',

  traffic: {
    road: 'calzada con los sentidos de su tránsito',
    adjacent: 'tránsito contiguo',
    opposing: 'tránsito contrario',
  },
  stations: (from, to) => `estaciones a lo largo del borde de la calzada, ${from} a ${to}`,
  lines: {
    centre: 'eje',
    edge: 'borde de la calzada',
    shoulder: (width) => `borde del acotamiento, ${width}`,
    shyLine: (offset) => `línea de recelo, ${offset}`,
    clearZone: (width) => `límite de la zona despejada, ${width}`,
    opposingClearZone: (width) => `zona despejada del tránsito contrario, a ${width} de su borde`,
  },
  surface: 'superficie de la vía y del borde',
  shyLine: 'línea de recelo',
  clearZone: 'límite de la zona despejada',
  ground: {
    travelledWay: (percent) => `calzada, ${percent} % supuesto`,
    shoulder: (percent) => `acotamiento, ${percent} % supuesto`,
    foreslope: (run) => `talud 1V:${run}H`,
    slope: (run) => `talud 1V:${run}H`,
    notStated: 'talud no indicado',
  },
  laterals: {
    shoulder: (lateral) => `acotamiento ${lateral}`,
    shyLine: (lateral) => `línea de recelo ${lateral}`,
    clearZone: (lateral) => `zona despejada ${lateral}`,
    barrier: (lateral) => `cara de la barrera ${lateral}`,
    hazard: (hazard, side, lateral) => `${hazard}, ${side === 'near' ? 'cerca' : 'lejos'} ${lateral}`,
  },

  hazard: (hazard, goesOn, governs) =>
    `${hazard}${goesOn ? ' (sigue)' : ''}${governs.length > 0 ? `: rige ${governs.map((one) => directions[one]).join(' y ')}` : ''}`,
  hazardSide: (side, lateral) => `lado ${nearness[side]} ${lateral}`,
  ofHazard: (hazard, words) => `${hazard}: ${words}`,
  barrierFrom: (offset) => `barrera a ${offset} del borde de la calzada`,
  face: (offset) => `cara de la barrera a ${offset} del borde`,
  flare: (rate) => `abocinado ${rate}:1`,
  unit: (name, length, countsFrom) => `${name}: ${length} de largo, cuenta desde ${countsFrom} detrás de su extremo`,
  barrier: (height) => `barrera, ${height}`,
  unitHeight: (name, height) => `${name}, ${height}`,
  topOfRail: (height) => `tope de la baranda ${height}`,
  heightNotStated: (height) => `altura no indicada, dibujada a ${height}`,

  path: (isTangent, direction) =>
    `trayectoria ${isTangent ? 'tangente' : 'de salida'} del tránsito ${direction === 'approach' ? 'contiguo' : 'contrario'}`,
  pathWithin: (path, runout) => `${path}, dentro de la longitud de salida de ${runout}`,
  pathOfLength: (path, runout) => `${path}, longitud de salida ${runout}`,
  end: (x, y) => `final de la necesidad: X ${x}, Y ${y}`,
  lengthOfNeed: (x) => [`longitud de necesidad X ${x}`, `X ${x}`],
  runout: (length) => [`longitud de salida ${length}`, `salida ${length}`],

  corner: (hazard, side, end) => `${hazard}, lado ${nearness[side]}, ${end === 'from' ? 'su principio' : 'su final'}`,
  offset: 'separación de la barrera',
  flareStart: 'principio del abocinado',
  flareEnd: 'final del abocinado',
}

const trafficWords = { 'two-way': 'doble sentido', 'one-way': 'sentido único', divided: 'dividida' } as const
const sides = { right: 'derecha', left: 'izquierda' } as const
const directions = { approach: 'entrada', departure: 'salida' } as const
const nearness = { near: 'cercano', far: 'lejano' } as const
