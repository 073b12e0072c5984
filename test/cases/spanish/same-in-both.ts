/** Names that people gave: of runs, hazards, people; and what they typed. */
const given = [
  ...['J. Okafor', 'it is another kind', 'the culvert', 'the inlet', 'the utility', 'Alder Creek culvert, right side'],
  ...['Alder Creek culvert', 'right side', 'County Road 14', 'pier 9', '"pier 9"', 'gate 7', 'culvert headwall'],
  ...['sign bridge leg', 'river', 'field access', 'abc', '1e3', 'yd', 'x'],
]

/** Ids, values and names of fields as they stand in a file. */
const fromFile = /^"[^"]*"$|^[a-z0-9]+(-[a-z0-9]+)+$|^"[^"]*"( or "[^"]*")+$/
const fields = ['true', 'false', 'null', 'a']

/** Criteria and tables by their names. */
const published = /(MASH|NCHRP) \d+|RDG \d{4} Table [\d-]+(\([ab]\))?/g

/** Books and who prints them. */
const publishers = /AASHTO |Roadside Design Guide|Midwest Roadside Safety Facility|NCHRP Report|FHWA|MASH|NCHRP/g

/** What reads the same in English and Spanish. */
export const isSame = (text: string): boolean =>
  given.includes(text) || fields.includes(text) || fromFile.test(text) || text.replaceAll(published, '') === ''

/** The text less all that reads the same. */
export const withoutNames = (text: string): string =>
  given
    .toSorted((a, b) => b.length - a.length)
    .reduce((rest, name) => rest.replaceAll(name, ''), text)

    .replaceAll(published, '')
    .replaceAll(publishers, '')
    .replaceAll(/(?<=un objeto con |el papel es |una respuesta ).*/g, '')
    .replaceAll(/"[^"]*"|“[^”]*”|[a-z0-9-]+\/[a-z0-9-]+|[a-z0-9]+(-[a-z0-9]+)+|\b[a-z]+[A-Z]\w+/g, '')
