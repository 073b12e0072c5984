import type { Site } from '../../../core/site/site.ts'

type Direction = 'approach' | 'departure'
type Side = 'near' | 'far'

/** Plan and cross section of a site. */
export const site = {
  plan: (hazards: string) => `Plan: barrier for ${hazards}`,
  section: (station: string) => `Cross section at station ${station}`,
  road: (
    speed: string,
    volume: string,
    traffic: Site['road']['traffic'],
    lanes: number,
    wide: string,
    shoulder: string,
  ) =>
    `Design speed ${speed}, ${volume} vehicles a day, ${traffic}, ${lanes} ${lanes === 1 ? 'lane' : 'lanes'} of ${wide}, shoulder ${shoulder}`,
  upStation: 'Up-station is to the right.',
  lookingUpStation: 'Seen looking up-station.',
  toScale: 'To scale: see the bar.',
  acrossLarger: (times: number) =>
    `Lengths along the road to scale: see the bar. ACROSS THE ROAD DRAWN ${times} TIMES LARGER.`,
  heightsLarger: (times: number) => `HEIGHTS ARE DRAWN ${times} TIMES THEIR SIZE.`,
  barAcross: (length: string) => `${length} across`,

  planShows: (from: string, to: string, side: Site['side']) =>
    `Plan of the road from station ${from} at the left to ${to} at the right, hazards on the ${side}.`,
  sectionShows: (station: string, side: Site['side']) =>
    `Cross section looking up-station at station ${station}, roadside on the ${side}.`,
  hazards: (hazards: readonly string[]) => `Hazards: ${hazards.join('; ')}.`,
  hazardAt: (hazard: string, from: string, to: string, near: string, far: string | null) =>
    `${hazard}, station ${from} to ${to}, ${near} to ${far ?? 'on beyond the clear zone'} from the edge`,
  hazardsHere: (hazards: readonly string[]) =>
    hazards.length > 0 ? `Hazards here: ${hazards.join(', ')}.` : 'No hazard here.',
  barrierStands: (offset: string) => `The face of the barrier stands ${offset} from the edge of travelled way.`,
  needEnds: (direction: Direction, length: string, hazard: string | null, lateral: string) =>
    `For the ${direction} the need ends ${length} from ${hazard ?? 'the hazard'}, ${lateral} from the edge.`,
  fromEdge: (laterals: readonly string[]) => `From the edge of travelled way: ${laterals.join('; ')}.`,
  slopesNotStated: (withoutSuperelevation: boolean) =>
    `Slopes of travelled way and shoulder are not stated; they are drawn as is common practice${withoutSuperelevation ? ', without superelevation' : ''}.`,
  heightsNotStated: 'Heights of hazards are not stated; they are drawn alike.',
  noBarrier: 'There is no barrier at this station.',

  traffic: {
    road: 'travelled way with the directions of its traffic',
    adjacent: 'adjacent traffic',
    opposing: 'opposing traffic',
  },
  stations: (from: string, to: string) => `stations along the edge of travelled way, ${from} to ${to}`,
  lines: {
    centre: 'centre line',
    edge: 'edge of travelled way',
    shoulder: (width: string) => `edge of shoulder, ${width}`,
    shyLine: (offset: string) => `shy line, ${offset}`,
    clearZone: (width: string) => `limit of clear zone, ${width}`,
    opposingClearZone: (width: string) => `clear zone of opposing traffic, ${width} from its edge`,
  },
  surface: 'surface of road and roadside',
  shyLine: 'shy line',
  clearZone: 'limit of clear zone',
  ground: {
    travelledWay: (percent: number) => `travelled way, ${percent} % assumed`,
    shoulder: (percent: number) => `shoulder, ${percent} % assumed`,
    foreslope: (run: number) => `foreslope 1V:${run}H`,
    slope: (run: number) => `slope 1V:${run}H`,
    notStated: 'slope not stated',
  },
  laterals: {
    shoulder: (lateral: string) => `shoulder ${lateral}`,
    shyLine: (lateral: string) => `shy line ${lateral}`,
    clearZone: (lateral: string) => `clear zone ${lateral}`,
    barrier: (lateral: string) => `face of barrier ${lateral}`,
    hazard: (hazard: string, side: Side, lateral: string) => `${hazard}, ${side} ${lateral}`,
  },

  hazard: (hazard: string, goesOn: boolean, governs: readonly Direction[]) =>
    `${hazard}${goesOn ? ' (goes on)' : ''}${governs.length > 0 ? `: governs ${governs.join(' and ')}` : ''}`,
  hazardSide: (side: Side, lateral: string) => `${side} side ${lateral}`,
  ofHazard: (hazard: string, words: string) => `${hazard}: ${words}`,
  barrierFrom: (offset: string) => `barrier ${offset} from the edge of travelled way`,
  face: (offset: string) => `face of barrier ${offset} from edge`,
  flare: (rate: number) => `flare ${rate}:1`,
  unit: (name: string, length: string, countsFrom: string) =>
    `${name}: ${length} long, counts from ${countsFrom} behind its outer end`,
  barrier: (height: string) => `barrier, ${height}`,
  unitHeight: (name: string, height: string) => `${name}, ${height}`,
  topOfRail: (height: string) => `top of rail ${height}`,
  heightNotStated: (height: string) => `height not stated, drawn at ${height}`,

  path: (isTangent: boolean, direction: Direction) =>
    `${isTangent ? 'tangential path' : 'runout path'} of ${direction === 'approach' ? 'adjacent' : 'opposing'} traffic`,
  pathWithin: (path: string, runout: string) => `${path}, within the runout length of ${runout}`,
  pathOfLength: (path: string, runout: string) => `${path}, runout length ${runout}`,
  end: (x: string, y: string) => `end of need: X ${x}, Y ${y}`,
  lengthOfNeed: (x: string): readonly [long: string, short: string] => [`length of need X ${x}`, `X ${x}`],
  runout: (length: string): readonly [long: string, short: string] => [`runout length ${length}`, `runout ${length}`],

  corner: (hazard: string, side: Side, end: 'from' | 'to') =>
    `${hazard}, ${side} side, ${end === 'from' ? 'its beginning' : 'its end'}`,
  offset: 'offset of the barrier',
  flareStart: 'beginning of the flare',
  flareEnd: 'end of the flare',
}
