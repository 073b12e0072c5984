import { useMemo, useState } from 'preact/hooks'
import { type Instrument, instrumentsReading } from '../../core/measurement/instruments.ts'
import type { Requirement } from '../../core/requirements/requirement.ts'
import { kindOf, type Unit } from '../../core/units/quantity-kinds.ts'
import { instrumentsOf } from '../../operations/instruments-of.ts'
import type { JudgedRun } from '../../operations/judge-readings.ts'
import { type InstrumentUse, rememberedVisit, rememberVisit, type Visit } from '../data/device.ts'
import { preferences, setPreferences } from '../fieldwork/preferences.ts'
import { m } from '../messages.ts'
import type { Complaint } from './complaint.tsx'
import { VisitFields } from './visit-fields.tsx'

interface Asked {
  readonly judged: JudgedRun
  readonly requirement: Requirement
  /** Whether the requirement itself is read, not a value that it is computed from. */
  readonly isDirect: boolean
  readonly isMeasured: boolean
  /** Of a number that names none. */
  readonly unit: Unit
  readonly complaint: Complaint | null
  /** Told after a field of the visit was changed. */
  readonly changed: () => void
}

/** Who reads, where they stand and with what, as it stays from one reading to the next; and the fields for it. */
export function useVisit({ judged, requirement, isDirect, isMeasured, unit, complaint, changed }: Asked) {
  const use: InstrumentUse = isDirect && requirement.figure === 'straightness' ? 'straightness' : kindOf(unit)
  const instruments = useMemo(
    () => instrumentsReading(instrumentsOf(judged.run), kindOf(unit)),
    [judged.run, kindOf(unit)],
  )
  const [visit, setVisit] = useState<Visit>(rememberedVisit)
  const [settings, setSettings] = useState(preferences)
  const instrument: Instrument = instruments.find(({ id }) => id === visit.instruments[use]) ?? instruments[0]!
  const fields = useMemo(
    () => (
      <VisitFields
        visit={visit}
        measuring={isMeasured ? { with: instrument, instruments } : null}
        use={use}
        complaint={complaint}
        change={(next) => {
          setVisit(next)
          rememberVisit(next)
          changed()
        }}
        settings={settings}
        set={(changes) => {
          setPreferences(changes)
          setSettings(preferences())
        }}
      />
    ),
    [visit, instrument, instruments, use, complaint, settings, isMeasured, m],
  )
  return { by: visit.by.trim(), where: visit.where.trim(), instrument, settings, fields }
}
