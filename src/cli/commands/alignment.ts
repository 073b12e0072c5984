import type { UnitSystem } from '../../core/site/site.ts'
import { written } from '../../formats/input-problem.ts'
import { readLandXml } from '../../formats/landxml/read-landxml.ts'
import { writeLandXml } from '../../formats/landxml/write-landxml.ts'
import { readSite } from '../../formats/site/read-site.ts'
import { writeElements } from '../../formats/site/write-elements.ts'
import { BadInput, badWords, type ExitCode, type Run } from '../command.ts'
import { words as inWords, print, printJson, readXmlText, say, shownName, soundValue, writeWhole } from '../io.ts'

export const alignment: Run = async (words, { output, units: wanted }) => {
  const [file, ...rest] = words
  if (file === undefined || rest.length > 0)
    throw badWords('alignment ROAD.xml, or SITE.json -o ROAD.xml', words.join(' '))
  const text = await readXmlText(file)
  if (!text.trimStart().startsWith('<')) return writeRoad(file, text, output)
  const units = (['us', 'metric'] as const).find((one) => one === (wanted ?? 'us'))
  if (units === undefined) throw badWords('--units us or metric', wanted!)
  return printRoad(file, text, units)
}

function printRoad(file: string, text: string, units: UnitSystem): ExitCode {
  const { unit, alignments, notes } = soundValue(readLandXml(shownName(file), text))
  for (const { place, said } of notes) say(`${shownName(file)}: ${place}: ${inWords.say(said)}`)
  const foot = unit === 'USSurveyFoot' ? 'US survey' : 'international'
  printJson({
    readIn: unit,
    units,
    alignments: alignments.map(({ name, horizontal, equations }) => ({
      name,
      alignment: writeElements('centreline', horizontal, equations, units, foot),
    })),
  })
  return 0
}

async function writeRoad(file: string, text: string, output: string | null): Promise<ExitCode> {
  if (output === null) throw badWords('-o ROAD.xml, to write the alignment of a site', 'none')
  const site = soundValue(readSite(shownName(file), text))
  const { alignment } = site.road
  if (alignment.kind !== 'elements') {
    throw new BadInput([
      {
        file: shownName(file),
        place: 'road.alignment',
        expected: { kind: 'alignment of elements' },
        found: written(alignment.kind),
      },
    ])
  }
  const now = new Date().toISOString()
  const { horizontal, equations } = alignment
  await writeWhole(
    output,
    writeLandXml(
      { unit: 'meter', alignments: [{ name: 'road', horizontal, equations }] },
      now.slice(0, 10),
      now.slice(11, 19),
    ),
  )
  print(`wrote ${output}`)
  return 0
}
