/** Places by their numbers, and distances between them. */
export const places = {
  numbered: {
    post: (numbers: string, isOne: boolean) => `${isOne ? 'post' : 'posts'} ${numbers}`,
    space: (numbers: string, isOne: boolean) => `${isOne ? 'space after post' : 'spaces after posts'} ${numbers}`,
    panel: (numbers: string, isOne: boolean) => `${isOne ? 'panel' : 'panels'} ${numbers}`,
    splice: (numbers: string, isOne: boolean) => `${isOne ? 'splice' : 'splices'} ${numbers}`,
  },
  onRoad: (station: string, offset: string, unit: string) => `station ${station}, offset ${offset} ${unit}`,
  fromDatum: {
    at: 'at the datum',
    upstream: (along: string) => `${along} of rail upstream of the datum`,
    downstream: (along: string) => `${along} of rail downstream of the datum`,
  },
  fromTo: (from: number, to: number) => `${from} to ${to}`,
}
