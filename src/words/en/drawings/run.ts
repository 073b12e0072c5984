import type { EndSheet, OmissionRule, SplicePosition } from '../../../core/hardware/hardware-sheet.ts'
import type { LayoutPanel, LayoutPost } from '../../../core/layout/layout.ts'
import type { PaperName } from '../../../core/units/paper-names.ts'

/** What stands on every view of a run: its pieces by their names, and how it is drawn. */
export const run = {
  /** Of documents too. */
  titleBlock: {
    cells: {
      agency: 'Agency',
      contract: 'Contract',
      project: 'Project',
      drawn: 'Drawn',
      checked: 'Checked',
      approved: 'Approved',
    },
    seal: 'Seal',
    revision: (number: number, date: string, what: string) => `Revision ${number}, ${date}: ${what}`,
    replaces: (issue: string) => `replaces ${issue}`,
  },
  standingRun: 'standing run',
  unknownEnd: 'end of which no sheet is known',
  datumAt: (station: string) => `datum at ${station}`,
  screenScale: (ratio: number) => `Scale 1:${ratio} before it is enlarged`,
  paperScale: (scale: string, paper: PaperName) => `Scale ${scale} when printed at 100 % on ${paper} paper`,
  barCheck: (length: string) => `this bar is ${length} long when printed at 100 %`,
  page: (number: number, of: number) => `page ${number} of ${of}`,
  onPage: (title: string, page: string) => `${title}, ${page}`,
  pieces: (posts: number, panels: number, splices: number) =>
    `${count(posts, 'post')}, ${count(panels, 'panel')}, ${count(splices, 'splice')}`,
  post: (number: number) => `post ${number}`,
  ownPost: (number: number, own: number) => `post ${number} (${own})`,
  postOf: (number: number, own: number, end: string) => `post ${number} (post ${own} of ${end})`,
  postFacts: (post: string, kind: string, state: LayoutPost['state'], hasBlock: boolean, along: string) =>
    `${post}, ${kind}${state === 'regular' ? '' : `, ${state}`}, ${hasBlock ? 'with block' : 'without block'}, at ${along}`,
  omitted: (along: string, obstruction: string, rule: OmissionRule['kind']) =>
    `no post at ${along}: ${obstruction}, ${rule}`,
  panel: (number: number) => `panel ${number}`,
  panelOf: (number: number, own: number, end: string) => `panel ${number} (panel ${own} of ${end})`,
  panelFacts: (panel: string, length: string, note: string | null) =>
    `${panel}, ${length}${note === null ? '' : `, ${note}`}`,
  panelLength: (number: number, length: string) => `panel ${number}: ${length}`,
  roles: { adapter: 'adapter', converting: 'converting', 'end only': 'end only', hung: 'hung' } satisfies Record<
    Exclude<LayoutPanel['role'], 'own' | 'standard'>,
    string
  >,
  nested: 'nested',
  splice: (number: number, position: SplicePosition) => `splice ${number}, ${positions[position]}`,
  spliceWithLap: (splice: string, inFront: 'upstream' | 'downstream') =>
    `${splice}, ${inFront} panel on the traffic side`,
  rows: { obstructions: 'no post here', parts: 'parts' },
  /** Where the name of the sheet has no room. */
  parts: {
    run: 'run',
    terminal: 'terminal',
    'trailing anchor': 'anchor',
    'buried end': 'buried end',
    'bridge end': 'bridge end',
    'standing splice': 'standing run',
    'unknown end': 'not known',
  } satisfies Record<'run' | EndKind, string>,
  fromPostOne: (unit: 'ft' | 'm') => `${unit} from post 1`,
  matchLine: (number: number) => `match line ${number}`,
}

type EndKind = EndSheet['kind'] | 'standing splice' | 'unknown end'

const count = (number: number, word: string): string => `${number} ${word}${number === 1 ? '' : 's'}`

const positions: Readonly<Record<SplicePosition, string>> = { post: 'at a post', midspan: 'midway between posts' }
