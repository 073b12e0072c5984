import type { AskedEarlier } from '../../core/record/readings-in-force.ts'
import type { RecordSaying } from '../../core/record/record-saying.ts'
import type { ReservedTopic } from '../../core/requirements/derived-topics.ts'
import type { Printers } from '../print.ts'

/** What was recorded at another version of a run, and its sheets. */
export const record: Printers<RecordSaying> = {
  'asked earlier': ({ because }) => earlierWords[because],
  'other sheet on shelf': ({ sheet, pinned, onShelf, isNewer }) =>
    pinned === onShelf
      ? `The shelf has other content under this edition of the sheet, ${sheet} ${onShelf}; this run is judged by what it was laid out with.`
      : `The shelf has ${isNewer ? 'a newer' : 'another'} edition of this sheet, ${sheet} ${onShelf}; this run is judged by the one it was laid out with, ${pinned}.`,
  'thing read': ({ place, version, what }, print) =>
    [
      print.say(place),
      ...(version === null ? [] : [version === 'another' ? 'of another version' : `version ${version}`]),
      ...(what === null ? [] : [print.say(what)]),
    ].join(', '),
  topic: ({ topic }) => topics[topic],
}

const earlierWords: Readonly<Record<AskedEarlier['because'], string>> = {
  'place gone': 'the run no longer has this place',
  'asked otherwise': 'the same place is asked something else now',
  'no longer asked': 'it is no longer asked of this place',
  'no version in common': 'the version that it was read at is not here, or has none in common with this one',
}

const topics: Readonly<Record<ReservedTopic, string>> = {
  'rail-height': 'rail height',
  'post-kind': 'kind of post',
  block: 'offset block',
  'rail-bolt': 'rail bolt',
  'hinge-side': 'side of the hinge bolt',
  'slot-set': 'slots of the post',
  'stub-height': 'stub height',
  'flare-offset': 'offset of the flare',
  spacing: 'post spacing',
  'panel-length': 'length of a panel',
  'slotted-panel': 'slotted panel',
  nested: 'doubled rail',
  straightness: 'straightness',
  'splice-position': 'place of a splice',
  lap: 'lap',
  curb: 'curb at a gap',
  'new-slot': 'new slot',
  criteria: 'crash test',
  crashworthy: 'crashworthy end',
  need: 'length of need',
  'rest-of-run': 'rest of the run',
  'end-hardware': 'known end',
  'end-joins': 'end joins the run',
  location: 'known place',
  'post-count': 'number of posts',
  'panel-count': 'number of panels',
  'site-check': 'check of the site',
  along: 'position along the rail',
  'lateral-offset': 'lateral offset',
}
