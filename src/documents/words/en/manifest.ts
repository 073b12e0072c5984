import type { PacketPurpose } from '../../../protocol/packet-purposes.ts'

/** What a packet says of itself. */
export const manifest = {
  lineNote: (points: string, model: string) =>
    `${points} and ${model}: the road is not given, so northing runs along the line of the run as if it were straight, 0 at the datum, and easting square to it, positive to the right looking up-station. These are no map coordinates.`,
  roadBeyond: (broken: string) => `the road beyond the run: ${broken}`,
  cannotBeStaked: (place: string, expected: string) => `${place}: expected ${expected}`,
  madeFor: (purpose: PacketPurpose) => `this packet is made for ${purposes[purpose]}`,
  nothingRead: 'nothing was read yet',
  noRoad: 'the run has no place on a road with coordinates',
  noReferenceSystem: 'the run has no place in a known reference system',
  photo: (name: string) => `photo: ${name}`,
  photos: (names: string) => `photos: ${names}`,
  noPhotos: 'no photos were asked for',
  photosElsewhere: 'they are not where this packet was made',
}

const purposes: Readonly<Record<PacketPurpose, string>> = {
  crew: 'the crew',
  survey: 'the surveyor',
  estimate: 'the estimate',
  record: 'the record',
}
