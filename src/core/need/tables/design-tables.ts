import type { Edition, UnitSystem } from '../../site/site.ts'
import { flareMetric, flareUs, shyLineMetric, shyLineUs } from './barrier-tables.ts'
import { cite } from './cite.ts'
import { clearZone2006Us, clearZone2011Us, clearZoneMetric } from './clear-zone-tables.ts'
import { curveFactor2006Us, curveFactor2011Us, curveFactorMetric } from './curve-factor-tables.ts'
import { runout2006Metric, runout2006Us, runout2011Metric, runout2011Us } from './runout-tables.ts'
import type { CellPart, ClearZoneTable, CurveFactorTable, DesignTables, RunoutTable } from './table.ts'

/** The tables of an edition of the Roadside Design Guide in a unit system. */
export const designTables = (edition: Edition, units: UnitSystem): DesignTables => tables[edition][units]

function tablesOf(
  units: UnitSystem,
  runout: RunoutTable,
  clearZone: ClearZoneTable,
  curveFactor: CurveFactorTable,
): DesignTables {
  const classes = runout.classes.map(({ from, to }) => ({ kind: 'volume', from, to }) as const)
  return {
    runout: cite(runout, units, 'runout length', classes),
    shyLine: cite(units === 'us' ? shyLineUs : shyLineMetric, units, 'shy-line offset', [null]),
    flare: cite(units === 'us' ? flareUs : flareMetric, units, 'flare limit', flareColumns),
    clearZone,
    curveFactor,
  }
}

const flareColumns: readonly CellPart[] = [
  { kind: 'flare', side: 'inside', barrier: null },
  { kind: 'flare', side: 'beyond', barrier: 'rigid' },
  { kind: 'flare', side: 'beyond', barrier: 'semi-rigid' },
]

const tables: Readonly<Record<Edition, Readonly<Record<UnitSystem, DesignTables>>>> = {
  'rdg-2011': {
    us: tablesOf('us', runout2011Us, clearZone2011Us, curveFactor2011Us),
    metric: tablesOf('metric', runout2011Metric, clearZoneMetric, curveFactorMetric),
  },
  'rdg-2006': {
    us: tablesOf('us', runout2006Us, clearZone2006Us, curveFactor2006Us),
    metric: tablesOf('metric', runout2006Metric, clearZoneMetric, curveFactorMetric),
  },
}
