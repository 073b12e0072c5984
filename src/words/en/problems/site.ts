import type { Printers } from '../../print.ts'
import type { SiteProblem } from '../../problems/site.ts'

export const siteProblems: Printers<SiteProblem> = {
  'outside travelled way': () =>
    'a hazard outside the travelled way, 0 or more from its edge (this one stands in the lane)',
  'far side': () => 'the lateral distance to its far side, or beyondClearZone true',
  'no slope of vertical face': () => 'no slope of a face that is vertical',
  'no median': () => 'no median on a road that is not divided',
  'width of median': () => 'the width of the median, to find the edge from the centreline',
  'flare rate': () => '14 or "14:1"',
  slope: () => '6 or "1V:6H"',
  'station beyond equation': () =>
    'a station further along the alignment than the equation before it, and on the alignment',
  'beyond near side': ({ value, unit }) => `at least the lateral distance to its near side, ${value} ${unit}`,
  'side of first hazard': ({ side }) => `the side of the first hazard, "${side}": one site is one run on one side`,
  'barrier in front': ({ hazard, bound, value, unit }) =>
    `a barrier in front of ${JSON.stringify(hazard)}, ${bound} ${value} ${unit} from the edge of travelled way`,
  'station after': ({ from }) => `a station at or after \`from\`, ${from}: stations rise along the road`,
  'station on alignment': ({ from, to }) =>
    `a station on the alignment, which runs from ${from} to ${to} without station equations`,
  'one place': ({ places }) =>
    `one place: this station comes twice, write the distance along the alignment instead (${places.join(' or ')})`,
  'alignment to': ({ end }, print) => `an alignment that ends at ${print.say(end)}`,
  elements: ({ count }) => `${count} elements`,
}
