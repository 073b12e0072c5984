import '../style/site.css'
import { feet, metres } from '../../core/units/quantity.ts'
import { stationWords } from '../../drawing/views/plan/site-words.ts'
import type { MadeOf } from '../../formats/run/made-of.ts'
import { siteFromValue } from '../../formats/site/read-site.ts'
import { m } from '../messages.ts'
import { ChecksPane } from './checks-pane.tsx'
import { Direction } from './need-pane.tsx'
import { words } from './words.ts'

interface Props {
  readonly madeOf: MadeOf
  readonly units: 'us' | 'metric'
}

/** The site that a run was made of, its need and its checks, as they were then: shown, never computed again. */
export function MadeOfPane({ madeOf, units }: Props) {
  const { site, need, checks } = madeOf
  const { need: s, actions } = words()
  // The file is the one thing of it that nobody has read yet.
  const read = siteFromValue(actions.fileName, site)
  const long = need.unit === 'ft' ? feet : metres
  const direction = (title: string, found: MadeOf['need']['approach']) => (
    <Direction
      title={title}
      report={{ ...found, notes: [] }}
      unit={need.unit}
      station={read.ok ? stationWords(read.value, long(found.station)) : null}
    />
  )
  const file = `data:application/json;charset=utf-8,${encodeURIComponent(`${JSON.stringify(site, null, 2)}\n`)}`
  return (
    <div class="made-of">
      <p class="hint">{m.layout.madeOfHow}</p>
      <p>
        <a class="button" href={file} download={`${actions.fileName}.json`}>
          {actions.save}
        </a>
      </p>
      <div class="site-directions">
        {direction(s.approach, need.approach)}
        {need.departure === null ? (
          <div>
            <h3>{s.departure}</h3>
            <p>{s.noDeparture}</p>
          </div>
        ) : (
          direction(s.departure, need.departure)
        )}
      </div>
      <ChecksPane checks={checks} units={units} />
    </div>
  )
}
