import type { RunFile, RunFileEnd } from './run-file.ts'
import { versionToShape } from './run-version.ts'

/** The run as the text that `readRun` reads back, nothing left to a default; what it does not say stays unsaid. */
export const writeRun = (run: RunFile): string => `${JSON.stringify(runToValue(run), null, 2)}\n`

/** The run as such a file has it, and as the body of its entry. */
export function runToValue(run: RunFile): object {
  const { need, flare, standing, decision } = run
  return {
    ...(run.version === undefined
      ? { format: 'lapwise-run/1' }
      : { format: 'lapwise-run/2', ...versionToShape(run.version) }),
    name: run.name,
    ...(run.project === undefined ? {} : { project: run.project }),
    ...(run.titleBlock === undefined ? {} : { titleBlock: run.titleBlock }),
    units: run.units,
    road: run.road,
    work: run.work,
    letting: run.letting,
    system: run.system,
    first: endToShape(run.first),
    second: endToShape(run.second),
    need: need && { from: need.fromInches, to: need.toInches },
    flare: flare && { rate: flare.rate, firstFrom: flare.firstFromInches, secondFrom: flare.secondFromInches },
    stock: run.stock?.map(({ inches, count }) => (count === null ? inches : { length: inches, count })) ?? null,
    obstructions: run.obstructions.map(({ name, fromInches, toInches }) => ({ name, from: fromInches, to: toInches })),
    ...(run.clearanceInches === undefined ? {} : { clearance: run.clearanceInches }),
    ...(run.curb === undefined ? {} : { curb: run.curb }),
    reduced: run.reduced.map(({ fromInches, toInches, ...part }) => ({ from: fromInches, to: toInches, ...part })),
    standing: standing && {
      postOneAt: standing.postOneAtInches,
      panels: standing.panels,
      postsDriven: standing.postsDriven,
      ...(standing.leftOutAtInches === undefined ? {} : { leftOut: standing.leftOutAtInches }),
      ...(standing.movedToInches === undefined ? {} : { moved: standing.movedToInches }),
      ...(standing.specialAtInches === undefined ? {} : { special: standing.specialAtInches }),
    },
    ...(run.counted === undefined ? {} : { counted: run.counted }),
    mayExtend: run.mayExtendInches,
    decision: decision && { postOneAt: decision.postOneAtInches, panels: decision.panels },
    decisionRule: run.decisionRule,
    instruments: run.instruments,
    sheets: run.sheets,
    ...(run.madeOf === undefined ? {} : { madeOf: run.madeOf }),
  }
}

function endToShape(end: RunFileEnd): unknown {
  if (end.kind === 'standing splice') return { standingSplice: { at: end.atInches, position: end.position } }
  const at = end.atInches === null ? {} : { at: end.atInches }
  if (end.kind === 'unknown') return { unknown: end.because, ...at, posts: end.posts, panels: end.panels }
  return { sheet: end.sheet, ...at }
}
