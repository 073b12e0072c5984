import type { Command } from './command.ts'

const paper = 'letter (the default), tabloid, A4 or A3'
const printed = {
  date: 'when it is printed, as 2026-05-12T10:05-06:00; now by default',
  author: 'who prints it',
}

/** What the command line tells of each command, in the order of the overview; none of them is loaded for it. */
export const commands: readonly Command[] = [
  {
    name: 'sheets',
    words:
      '[list | show ID | validate FILE … | texts SHEET | translate SHEET TABLE | card SHEET | compare SHEET OTHER]',
    firstWords: ['list', 'show', 'validate', 'texts', 'translate', 'card', 'compare'],
    summary:
      'The hardware sheets that ship; checks a sheet file; its texts as a table, to be translated; cards to print.',
    options: {
      output: 'where to write the table of texts, the translated sheet or the card',
      ...{ page: paper, language: 'en (the default) or es, of a card' },
      units: 'us or metric, of a card; lengths as they are published by default',
      ...printed,
    },
    notes: [
      'list            every sheet: id, version, what it is (the default)',
      'show ID         one sheet whole, as JSON',
      'validate FILE   checks sheet files against the format and its sense; - reads standard input',
      'texts SHEET     every text of a sheet file as CSV, with what its other language says, and what is missing or changed',
      'translate       the sheet file with the translations of such a table, as its next edition',
      'card SHEET      its checks in walking order, with right and wrong pictures, as PDF: one sheet of paper to fold',
      'compare         what differs between two sheets, with both figures and why it matters, as PDF',
      'SHEET of a card is the id of one that ships, or a file; card takes the file of its barrier as second.',
    ],
    examples: [
      'sheets',
      'sheets show flared-terminal-31',
      'sheets validate county-terminal.json',
      'sheets texts county-terminal.json -o texts.csv',
      'sheets translate county-terminal.json texts.csv -o next.json',
      'sheets card flared-terminal-31 -o card.pdf --language es',
      'sheets compare flared-terminal-27-3-4 flared-terminal-31 -o differs.pdf',
    ],
    load: async () => (await import('./commands/sheets.ts')).sheets,
  },
  {
    name: 'alignment',
    words: 'ROAD.xml | SITE.json -o ROAD.xml',
    summary:
      "A LandXML 1.2 road's alignments in the short form that a site file takes; or a site's alignment as LandXML.",
    options: {
      units: 'us (feet, the default) or metric, for the short form',
      output: 'where to write the LandXML of a site; metres',
    },
    notes: ['Gaps and kinks of a road file, and numbers of it that disagree, are told on standard error.'],
    examples: ['alignment road.xml --units metric', 'alignment site.json -o road.xml'],
    load: async () => (await import('./commands/alignment.ts')).alignment,
  },
  {
    name: 'need',
    words: 'SITE.json',
    summary:
      'Where the barrier must begin and end for both directions of traffic, and whether the hardware is right there.',
    options: { output: 'writes the run that the need asks for as a run file' },
    notes: ['With --json the whole result; "lapwise layout" takes it as it is.'],
    examples: ['need site.json', 'need site.json -o run.json', 'need site.json --json | lapwise layout -'],
    load: async () => (await import('./commands/need.ts')).need,
  },
  {
    name: 'plan',
    words: 'SITE.json -o PLAN.svg',
    summary:
      'The site drawn to scale with its need: edges, clear zone, hazards, runout path, barrier; or its cross section.',
    options: {
      output: 'where to write it',
      station: 'the cross section at a continuous station, as 12+37.50',
      page: 'web (the default), letter, tabloid, A4 or A3',
    },
    examples: ['plan site.json -o plan.svg', 'plan site.json -o section.svg --station 2+00'],
    load: async () => (await import('./commands/plan.ts')).plan,
  },
  {
    name: 'layout',
    words: 'RUN.json',
    summary: 'The lawful runs, best first, every post, panel and splice; and why the others are refused.',
    options: { limit: 'how many lawful runs to print (20 when not given; at most 10000, which all stands for)' },
    notes: ['With --json inches along the rail from the centre of post 1.'],
    examples: ['layout run.json --limit 3', 'layout run.json --json'],
    load: async () => (await import('./commands/layout.ts')).layout,
  },
  {
    name: 'pin',
    words: 'RUN.json [-o PINNED.json]',
    summary:
      'Pins a run to the layout chosen and its sheets by content, so that nothing it is judged by moves any more.',
    options: { output: 'where to write it; standard output by default' },
    examples: ['pin run.json -o pinned.json'],
    load: async () => (await import('./commands/pin.ts')).pin,
  },
  {
    name: 'revise',
    words: 'PINNED.json ASKED.json -o NEXT.json',
    summary: 'The next version of a pinned run: what keeps its readings, what is gone, what is new.',
    options: {
      output: 'where to write the next version',
      because: 'why the run is changed; stands with the version from then on',
    },
    notes: ['ASKED.json is what is asked now, as a run file.'],
    examples: ['revise pinned.json longer.json -o next.json --because "a ditch was found"'],
    load: async () => (await import('./commands/revise.ts')).revise,
  },
  {
    name: 'shelf',
    words: 'FOLDER | --store PLACE',
    summary: 'The pinned runs whose sheets are others on the shelf, with what differs; none is judged anew.',
    options: {
      store: "a server's folder of data, while the server does not run, or its database as postgres://…",
    },
    notes: [
      'FOLDER holds run files. With --json each run with its sheets, both versions and each value that differs.',
      'Ends with 0 whether or not anything differs.',
    ],
    examples: ['shelf runs', 'shelf --store data'],
    load: async () => (await import('./commands/shelf.ts')).shelf,
  },
  {
    name: 'requirements',
    words: 'RUN.json',
    summary: 'What must be true of the run, place by place in walking order, first what gets covered.',
    options: {},
    notes: ['With --json limits, choices, how to look, why, remedy, source and confirmation too.'],
    examples: ['requirements run.json', 'requirements run.json --json'],
    load: async () => (await import('./commands/requirements.ts')).requirements,
  },
  {
    name: 'judge',
    words: 'RUN.json READINGS.json',
    summary: 'The verdict on every requirement, the findings with their remedies, and what is not proven.',
    options: {},
    notes: [
      'With --json every verdict with value, margin, uncertainty and probability of conformity.',
      'Ends with 0 when the run is acceptable; 1 when it is not, not yet known, or something is set aside.',
    ],
    examples: ['judge run.json readings.json', 'judge run.json readings.json --json'],
    load: async () => (await import('./commands/judge.ts')).judge,
  },
  {
    name: 'strip',
    words: 'RUN.json -o STRIP.svg|STRIP.dxf',
    summary: 'The to-scale picture of the run as SVG or DXF, with verdicts when readings are given.',
    options: {
      output:
        'where to write it: SVG, or DXF when it ends in .dxf; further sheets of a long run get -2, -3 … before the ending',
      readings: 'draws the verdicts too',
      view: 'strip (from above, the default), elevation (square to the rail), or detail (each end unit larger, with its parts)',
      page: 'web (one long picture, the default), letter, tabloid, A4 or A3; SVG alone',
    },
    examples: ['strip run.json -o strip.svg --readings readings.json', 'strip run.json -o run.dxf --view elevation'],
    load: async () => (await import('./commands/strip.ts')).strip,
  },
  {
    name: 'record',
    words: 'RUN.json READINGS.json -o RECORD.pdf',
    summary:
      'The inspection record as PDF: every requirement with reading, limit and verdict, findings, what is not proven.',
    options: {
      output: 'where to write it',
      summary: 'the summary of two pages instead, for the file beside the record',
      ...{ page: paper, landscape: 'pages of text lie' },
      language: 'en (the default) or es',
      units: 'us or metric; those of the run by default',
      ...printed,
    },
    notes: ['With --json all that the record says as one JSON file, on standard output; -o is not needed then.'],
    examples: [
      'record run.json readings.json -o record.pdf',
      'record run.json readings.json -o resumen.pdf --summary --language es',
      'record run.json readings.json --json',
    ],
    load: async () => (await import('./commands/record.ts')).record,
  },
  {
    name: 'handover',
    words: 'FILE [--run ID] [-o OUT.zip | OUT.json]',
    summary:
      'What a file from a device holds, run by run, and what of it is not sound; written as the other format too.',
    options: {
      run: 'of this run alone',
      output: 'writes it as a handover (.zip), or as one JSON file (.json); only when all of it is sound',
    },
    notes: [
      'FILE holds runs with entries and photos, as a phone gives it: a ZIP file, or JSON of earlier ones.',
      'Ends with 2 when anything in it is not sound.',
    ],
    examples: ['handover from-phone.zip', 'handover from-phone.zip -o from-phone.json'],
    load: async () => (await import('./commands/handover.ts')).handover,
  },
  {
    name: 'packet',
    words: 'RUN.json [READINGS.json] -o OUT/',
    summary:
      'Everything the crew, the engineer and the archive need: crew sheet, record, as-built, quantities, stakes, drawings.',
    options: {
      for: 'crew, survey, estimate or record; without it all that can be true now, before anything was read too',
      output: 'a folder that is not there yet, or an empty one; it appears whole or not at all',
      device:
        'what a device exports: day logs, locate tickets, signatures and photos; without READINGS.json its readings too',
      photos: 'where the photos are that are named; each one has to be there',
      'no-photos': "leaves the photos out, those of the device's file too",
      ticket: 'the utility ticket, for the crew sheet, instead of those of the device',
      zone: 'whose days the daily reports take, as America/Denver; those of this machine by default',
      language: 'en (the default) or es; the crew sheet is made in both',
      page: paper,
      landscape: 'pages of text lie, as drawings always do; without it they stand',
      ...printed,
      date: `${printed.date}. With it the same files give the same bytes`,
      pay: '0.1 ft (the default), 1 ft or 12.5 ft',
      boundaries:
        'where the run begins and ends for pay: splice (the default), post N of the end unit or listed length',
      'stake-order': 'northing (the default) or easting first',
      'no-header': 'leaves out the line that names the columns of the stakes',
      alignment: 'the road: LandXML 1.2 (of several alignments FILE#NAME) or a site file',
      offset:
        'with --alignment: from it to the face of rail, on the side that the run file says; adds stakes.xml and stakes.dxf',
      epsg: 'with --offset: code of the projected reference system of the alignment; adds run.geojson and run.gpkg',
    },
    notes: [
      'manifest.json names every file by its SHA-256 and says what was left out.',
      'A packet cut off while it is written stays beside OUT as OUT.….partial, which can be deleted.',
    ],
    examples: [
      'packet run.json readings.json -o packet',
      'packet run.json --for crew -o packet',
      'packet run.json --device from-phone.zip -o packet --zone America/Denver',
    ],
    load: async () => (await import('./commands/packet.ts')).packet,
  },
]
