import { findNeed } from '../../core/need/need.ts'
import { toMetres } from '../../core/units/exact-length.ts'
import { paperNames } from '../../core/units/paper-names.ts'
import { parseStation } from '../../core/units/station.ts'
import { lengthFault } from '../../formats/range/range-faults.ts'
import { unusualInSite } from '../../formats/range/unusual.ts'
import { readSite } from '../../formats/site/read-site.ts'
import { needProblem } from '../../operations/compute-need.ts'
import { writePlan, writeSection } from '../../operations/write-site-drawings.ts'
import { english } from '../../words/english.ts'
import { BadInput, badWords, type Run } from '../command.ts'
import { note, readText, shownName, soundValue, warn, words, writeWhole } from '../io.ts'

const pages = ['web', ...paperNames] as const

export const plan: Run = async (args, { output, page: wanted, station }) => {
  const [file, ...rest] = args
  if (file === undefined || rest.length > 0 || output === null)
    throw badWords('plan SITE.json -o PLAN.svg', args.join(' '))
  const page = pages.find((one) => one === (wanted ?? 'web'))
  if (page === undefined) throw badWords(`--page ${pages.join(', ')}`, wanted!)
  const site = soundValue(readSite(shownName(file), await readText(file)))
  warn(shownName(file), unusualInSite(site))
  const need = findNeed(site)
  if (!need.ok) throw new BadInput([needProblem(shownName(file), need.error, site.units)])
  if (station === null) await writeWhole(output, writePlan(site, need.value, page, english(site.units)))
  else {
    const at = parseStation(station, site.units)
    if (!at.ok) throw badWords(`--station: ${words.say({ kind: 'no station', problem: at.error })}`, station)
    const beyond = lengthFault('station', toMetres(at.value))
    if (beyond !== null) throw badWords(`--station: ${words.say(beyond)}`, station)
    await writeWhole(output, writeSection(site, need.value, at.value / 1e9, page, english(site.units)))
  }
  note(`wrote ${output}`)
  return 0
}
