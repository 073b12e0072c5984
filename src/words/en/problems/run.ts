import { feetInchesText } from '../../../core/hardware/dimension-text.ts'
import type { Print, Printers } from '../../print.ts'
import type { RunProblem } from '../../problems/run.ts'

export const runProblems: Printers<RunProblem> = {
  'no opposing traffic': () => 'false or nothing where traffic goes one way',
  'start of flare': () => 'where the flare begins, as "firstFrom" or "secondFrom"',
  'stretch to shield': () => 'the stretch to shield, as both ends are not fixed',
  'from before to': () => 'from before to',
  'place of bridge': () => 'where the bridge connection is',
  'beyond start': ({ inches }) => `more than ${inches} in, where it begins`,
  'beyond first flare': ({ inches }) => `more than ${inches} in, where the flare of the first end begins`,
  'beyond first end': ({ inches }) => `more than ${inches} in, where the first end is; distances grow downstream`,
  'at most inches': ({ inches }) => `at most ${inches} in`,
  'longest run': ({ inches }) =>
    `at most ${inches} in (10 miles) in one run: split a longer one at a splice into runs that name it as standingSplice`,
  inches: ({ inches }) => `${inches} in`,
  stretch: ({ fromInches, toInches }) => `${fromInches} in to ${toInches} in`,
  'posts at most': ({ posts }) =>
    `at most ${posts} posts in one run: split it at a splice into runs that name it as standingSplice`,
  posts: ({ posts }) => `${posts} posts`,
  'sheet id': ({ ids }) => `the id of a sheet: ${ids.join(', ')}`,
  'joined system': ({ unit, systems }, print) => `a system that the ${print.say(unit)} joins: ${systems.join(', ')}`,
  'system named': ({ system }, print) => print.say(system),
  'counted run': () => 'a sheet or a standing splice: only of a run that was counted (`counted`) an end may be unknown',
  'nothing where counted': () => 'nothing, where the run was counted',
  'end where counted': () => 'a sheet, or `unknown` where the run was counted',
  'end looked at': () => 'an end that somebody looked at: of a run that was counted at least one',
  'at most counted': ({ pieces }) => `at most ${pieces}, as many as were counted`,
  'lawful run': () => 'a run that can be laid out lawfully',
  'within obstruction': () => 'a place within one of the obstructions',
  'lawful layout': () => 'one of the lawful layouts (see the layout command)',
  'no lawful run': ({ reasons }, print) => `none: ${reasons.map(print.say).join('; ')}`,
  'decided layout': ({ panels, fromInches, reasons }, print) =>
    `panels ${panels.join(', ')} from ${fromInches} in${reasons.length === 0 ? '' : ` (${reasons.map(print.say).join('; ')})`}`,
  'side of road': () => '"right" or "left", to place the run on its road',
  'traffic of left side': () => 'the kind of traffic, which says whether a run on the left goes up-station',
  'station of alignment': () => 'a station of the alignment',
  'station with one meaning': () => 'a station of the alignment that its station equations leave only one meaning',
  'run within stations': ({ from, to }) =>
    `a run between stations ${from.toFixed(3)} m and ${to.toFixed(3)} m of the alignment`,
  'rail beyond stations': ({ along }) => `rail that leaves it ${along.toFixed(3)} m along the rail from post 1`,
  'units of its road': ({ road }) =>
    `a run in ${road === 'metre' ? 'metric' : 'us'} units, as its road in ${road === 'metre' ? 'metres' : road === 'foot' ? 'feet' : 'US survey feet'}: the station of its datum could be read two ways`,
  'units of run': ({ units }) => `one in ${units} units`,
  'road without breaks': () => 'a road that goes on without gap or kink to the end of the run',
  'break of road': ({ station, metres, degrees }, print) =>
    `at station ${station} it goes on ${breakText(metres, degrees, print)}`,
  'radius beyond offset': ({ metres }) =>
    `a curve with a radius of more than ${metres.toFixed(3)} m on the side of the run`,
  'radius in metres': ({ metres }) => `a radius of ${metres.toFixed(3)} m`,
  'stated flare offset': () => 'a sheet that states the nominal offset of its flare',
  'flare to free end': () => 'a flare toward an end that may leave the line of the rail',
  'flare to bridge': () => 'one toward a bridge end',
  'flare to standing run': () => 'one toward a run that stands',
  'flare on straight': () =>
    'a straight road beside the flared rail: a flare is generally not used on a curve, and is not staked there',
  'flare clear of unit': ({ sheet }) =>
    `a flare that begins on the run's own rail, clear of the end unit ${sheet}: a bend inside it was not tested`,
  'bend inside unit': ({ flareInches, unitInches }) =>
    `a bend ${feetInchesText(flareInches)} along the rail from post 1, where the unit reaches to ${feetInchesText(unitInches)}`,
  'area of reference': ({ name, code }) => `coordinates in the area of ${name} (EPSG:${code})`,
  'outside area': ({ of, easting, northing }) =>
    `${of} at easting ${easting.toFixed(1)} m, northing ${northing.toFixed(1)} m`,
  'run between boundaries': () => 'a run between its two boundaries',
  'boundary at post': ({ end, posts }) => `a boundary at one of the ${posts} posts of the ${end} end`,
  'post numbered': ({ number }) => `post ${number}`,
  'crossed boundaries': ({ inches }) => `a first boundary ${inches} in beyond the second`,
}

function breakText(metres: number, degrees: number, print: Print): string {
  const apart = metres < 0.001 ? [] : [`${print.length(Number(metres.toFixed(4)), 'm')} away`]
  const turned =
    Math.abs(degrees) < 0.001
      ? []
      : [`turned ${Math.abs(degrees).toFixed(3)}° to the ${degrees > 0 ? 'right' : 'left'}`]
  return print.list([...apart, ...turned], 'and')
}
