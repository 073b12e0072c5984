import type { PlainChoice, RequirementSaying } from '../../core/requirements/requirement-saying.ts'
import type { Printers } from '../print.ts'
import { slotSize } from '../slot-size.ts'
import { theirNames } from '../their-names.ts'
import { byTopic } from '../topics.ts'
import { upperFirst } from '../upper-first.ts'
import { neededTestName } from './hardware.ts'

/** What follows from layout, sheets and run file: what must be true, how to look, why, what else to do. */
export const requirements: Printers<RequirementSaying> = {
  must: byTopic<'must'>({
    block: ({ block }) => (block ? 'The post carries an offset block.' : 'The post carries no offset block.'),
    'post-kind': ({ postKind }, print) => `The post is a ${print.say(postKind)}.`,
    'rail-bolt': ({ bolted }) =>
      bolted ? 'The rail is bolted to the post, without a washer on its face.' : 'The rail is not bolted to the post.',
    'hinge-side': ({ side }) => `The hinge bolt is on the side ${sides[side]}.`,
    'slot-set': ({ set, side }) => `The rail is held in the open ${set} slots of the post, on its side ${sides[side]}.`,
    'slotted-panel': ({ name, inches }, print) =>
      `The panel is the ${print.say(name)}, ${print.feetInches(inches)} long, with a row of ${print.written('4-in', 4, 'in')} slots along it.`,
    'panel-length': ({ inches, isAdapter }, print) =>
      isAdapter
        ? `The last panel before the run is ${print.feetInches(inches)} long, which brings the splices where they belong.`
        : `The panel is ${print.feetInches(inches)} long, splice to splice.`,
    nested: 'Two panels lie one in the other (nested) here.',
    'splice-position': ({ position }) =>
      position === 'post' ? 'The splice lies at a post.' : 'The splice lies midway between two posts.',
    lap: ({ over }) =>
      `The ${over} panel lies on the traffic side of the splice${over === 'upstream' ? ', so that its edge points away from adjacent traffic' : ', toward the terminal end'}.`,
    'rail-height': ({ limits }, print) => `The top of the rail stands ${print.say(limits)} above finish grade.`,
    'stub-height': ({ limits }, print) => `The lower post (stub) stands ${print.say(limits)} above finish grade.`,
    straightness: ({ limits }, print) =>
      `The panel is straight: its middle lies ${print.say(limits)} from the line between its ends.`,
    'flare-offset': ({ limits, isFlared }, print) =>
      `Post 1 stands ${print.say(limits)} off ${isFlared ? 'the flared line of the run before the end, carried on' : 'the line of the run'}, away from traffic.`,
    spacing: ({ inches, omitted }, print) => {
      const apart = `The posts stand ${print.feetInches(inches)} apart, centre to centre`
      if (omitted === null) return `${apart}.`
      const posts = omitted.posts === 1 ? 'a post is' : `${omitted.posts} posts are`
      return `${apart} (${posts} left out for ${theirNames(omitted.obstructions, print)}).`
    },
    curb: ({ obstructions }, print) =>
      `No curb stands before the rail where posts are left out for ${theirNames(obstructions, print)}.`,
    'new-slot': ({ slot }) =>
      `The rail is bolted to the moved post through a new slot of ${slotSize(slot)}, cut smooth and sprayed with zinc; the old slot stays as it was made.`,
    criteria: 'One crash test of the hardware covers the criteria in force for the work and the speed of the road.',
    crashworthy: ({ end }) =>
      end === 'approach'
        ? 'The end that adjacent traffic meets first is crashworthy.'
        : 'The end is crashworthy, or opposing traffic cannot reach it.',
    need: 'The rail that counts covers the whole stretch that has to be shielded.',
    'rest-of-run': 'The run is sound from end to end, and long enough.',
    'end-hardware': 'What ends the run is known by its hardware sheet.',
    'end-joins': 'The end unit stands at a system that its sheet joins.',
    location: 'It is known where the run stands.',
    'post-count': 'Every post that the sheets ask for stands.',
    'panel-count': 'Every panel that the sheets of the ends ask for hangs.',
    'site-check': ({ what, limit }, print) => `${upperFirst(print.say(what))}: ${print.say(limit)}.`,
  }),

  'how to look': byTopic<'how to look'>({
    block: 'Look between rail and post.',
    'post-kind': 'Look at the whole post; at a wood post tap it and look for rot at the ground.',
    'rail-bolt': 'Look at the face of the rail in front of the post.',
    'hinge-side': 'Look at the joint of upper and lower post from the side.',
    'slot-set': 'Look at the back of the rail where it meets the post.',
    'slotted-panel': 'Look along the middle of the panel.',
    'panel-length':
      'Measure from splice centre to splice centre, not from end to end of the sheet: a panel is about a foot longer overall.',
    nested: 'Look at the edge of the rail from below.',
    'splice-position': 'Stand square to the rail and look where the splice bolts are.',
    lap: 'Look at the face from upstream: no edge may point at you.',
    straightness: ({ measured }, print) =>
      `${print.say(measured)}; or read the lateral offset of every post from one string, and say the side of each.`,
    'flare-offset': ({ measured }, print) =>
      `${print.say(measured)}; sight along the run or stretch a string past at least two of its posts, and say the side.`,
    spacing: ({ measured }, print) => `${print.say(measured)}; or pull one tape from post 1 and read every post on it.`,
    curb: 'Look along the edge of the pavement in front of the gap.',
    'new-slot': 'Look at the face and the back of the rail at the moved post and where the post would have stood.',
    criteria: 'Compare letting date, kind of work and speed with the tests on the sheet; nothing has to be measured.',
    crashworthy: 'Compare the sheet of the end with the traffic that can reach it; nothing has to be measured.',
    need: 'Compare the run with the need of its site: road, traffic, hazards. Nothing on the rail shows it.',
    'rest-of-run': 'Walk the run to its other end and count its panels and posts.',
    'end-hardware': "Find out which hardware it is, from the owner's records or its marks, and get its sheet.",
    'end-joins': 'Compare height and splices of the run with those of the end unit.',
    location:
      'Read the station of the nearest mark of the road, or take the position of the device at the end of the rail.',
    'post-count': 'Count the posts, and measure the wide space.',
    'panel-count': 'Count the panels from splice to splice.',
    'site-check':
      'It was found from the site when the run was made of it; no reading decides it anew. What was put right since is set aside by name, with what was done as the reason.',
  }),

  'why it matters': byTopic<'why it matters'>({
    block: ({ block }) =>
      block
        ? 'Without the block a wheel snags on the post.'
        : 'A block here keeps the post from breaking away as tested.',
    'post-kind': 'Only the post that was tested bends or breaks as tested.',
    'rail-bolt': ({ bolted }) =>
      bolted
        ? 'A loose rail drops; a washer keeps the rail from coming off the post as tested.'
        : 'A bolt here holds the rail back when the head has to move.',
    'hinge-side': 'On the wrong side the post does not fold as tested.',
    'slot-set': 'The slot set fixes the rail height and lets the rail come free.',
    // Transportation Research Record 1500, 1995, pages 43 to 51, abstract: slots reduce the buckling strength, not the tensile.
    'slotted-panel':
      'The slots make the panel bend at a lower force when the end is hit, and leave its strength in tension; a plain panel resists far more.',
    'panel-length': 'A panel of another length moves every splice beyond it.',
    nested: 'The rail spans a gap here and was tested doubled.',
    'splice-position': 'The system was tested with its splices there; elsewhere the rail tears at the splice.',
    lap: 'An edge that points at traffic catches a vehicle and opens the splice.',
    'rail-height': 'Too low, a vehicle goes over the rail; too high, it goes under or snags.',
    'stub-height': 'A vehicle passes over the stub after the post breaks away; a taller one snags its floor.',
    straightness:
      'The terminal was tested with straight panels; a curved one buckles out of line when the head is struck.',
    'flare-offset': 'The flare takes the head away from traffic and was tested at this offset.',
    spacing: 'Wider, the rail pockets; and the bolts no longer meet the slots.',
    curb: 'Coming over a curb a vehicle loads the rail across a gap otherwise than in the test without one; plain rail has torn there.',
    'new-slot': 'A rough or enlarged slot is where the rail tears under load; bare steel rusts there.',
    criteria:
      'A level reached under older criteria says nothing of the newer ones. Standing hardware may serve out its life, at the speed that its test covers.',
    crashworthy: 'An end that is not made to be struck stops a vehicle, spears it or throws it over.',
    need: 'A sound terminal before too short a run shields nothing: a vehicle passes behind it.',
    'rest-of-run': 'A terminal holds only with the run behind it, and proves nothing about it.',
    'end-hardware': 'What is not known cannot be compared with what was tested.',
    'end-joins': 'A unit was tested with rail of its own height and splices.',
    location: 'A record that names no place may be taken for that of another run.',
    'post-count': 'Where a post is missing the rail pockets and tears.',
    'panel-count': 'Without its own panels an end unit does not work as tested.',
    'site-check':
      'Hardware works as it was tested only where room, ground, height and traffic are as its tests had them.',
  }),

  'if it fails': byTopic<'if it fails'>({
    block: ({ block }) =>
      block ? 'Fit the offset block.' : 'Take the offset block out and fix the rail as the manual shows.',
    'post-kind': ({ postKind }, print) => `Replace the post by a ${print.say(postKind)}.`,
    'rail-bolt': ({ bolted }) =>
      bolted ? 'Bolt the rail to the post with a button head and no washer on the face.' : 'Take the bolt out.',
    'hinge-side': ({ side }) => `Move the hinge bolt to the side ${sides[side]}.`,
    'slot-set': ({ set, side }) => `Set the rail in the ${set} slots on the side ${sides[side]}.`,
    'slotted-panel': ({ name, inches }, print) =>
      `Replace the panel by the ${print.say(name)}, ${print.feetInches(inches)} long.`,
    'panel-length': ({ inches }, print) => `Replace the panel by one of ${print.feetInches(inches)}.`,
    nested: 'Add the second panel.',
    'splice-position': 'Bring the splice where it belongs by exchanging panels.',
    lap: 'Take the splice apart and lap it the other way.',
    'rail-height': 'Raise or lower the rail within its limits.',
    'stub-height': 'Lower the post or reset it.',
    straightness: 'Bring the posts into a straight line between the ends of the panel.',
    'flare-offset': ({ limits }, print) =>
      `Move the end so that it stands ${limits.nominal === 'notStated' ? print.say(limits) : print.quantity(limits.nominal, limits.unit)} off the line, away from traffic.`,
    spacing: ({ slots }, print) => `Move the post. ${print.say(slots)}`,
    curb: ({ doubledInches }, print) =>
      doubledInches === null
        ? 'Lay the run out again and say that there is a curb: the sheet does not allow this gap at a curb.'
        : `Lay the run out again and say that there is a curb: ${print.feetInches(doubledInches)} of rail round the gap then has to be doubled.`,
    'new-slot': ({ slot }) =>
      `Spray a bare slot with zinc. Where the slot is rough, of another size or an old one enlarged, replace the panel and cut a new slot of ${slotSize(slot)}, smooth and sprayed with zinc.`,
    criteria: ({ needed }) => `Choose hardware with ${neededTestName(needed)}.`,
    crashworthy: 'Put a crashworthy terminal at this end.',
    need: 'Lengthen the run, or move the end, until the rail that counts covers the need.',
    'rest-of-run': 'Check the rest of the run.',
    'end-hardware': 'Put hardware there of which the sheet is at hand, or get the sheet.',
    'end-joins': 'Find out which of the two is what it was taken for; else put a unit there that joins this system.',
    location: 'Find out where the run stands.',
    'post-count':
      'Find where a post is missing and set it, or say for which obstruction it is left out and lay the run out again.',
    'panel-count': 'Hang the panels that the sheet of the end asks for.',
    'site-check': ({ change }, print) =>
      change === null
        ? 'Put right what the site says here, or take hardware that is right for it.'
        : `${upperFirst(print.say(change))}.`,
  }),
  'rail slots': ({ newSlotAt }) =>
    newSlotAt === null
      ? 'The rail slot may not be enlarged in the field.'
      : `No slot may be enlarged in the field: post ${newSlotAt}, which is moved by the layout, gets a new one, as its own requirement says.`,

  choice: ({ is }) => choices[is],
  'choice of post': ({ postKind }, print) => `A ${print.say(postKind)}, sound`,
  'choice of slots': ({ set, side }) => `In the ${set} slots${side === 'either' ? '' : `, ${sides[side]}`}`,
  'choice of panel': ({ inches }, print) => print.feetInches(inches),
  'choice of new slot': ({ slot }) => `A new slot of ${slotSize(slot)}, smooth, zinc-sprayed`,
}

/** Sides of a post of an end unit. */
const sides = { upstream: 'toward the head', downstream: 'away from the head', other: 'on the other side' } as const

const choices: Readonly<Record<PlainChoice, string>> = {
  'offset block': 'An offset block',
  'no offset block': 'No offset block',
  'another kind of post': 'Another kind of post',
  'damaged post': 'Damaged, rotten or cut',
  'bolted without washer': 'Bolted, no washer on the face',
  'bolted with washer': 'Bolted with a washer on the face',
  bolted: 'Bolted',
  'not bolted': 'Not bolted',
  'toward the head': 'Toward the head',
  'away from the head': 'Away from the head',
  'not held in slots': 'Not held in slots',
  slotted: 'Slotted',
  'not slotted': 'No slots',
  'another length': 'Another length',
  nested: 'Nested',
  single: 'Single',
  'splice at a post': 'At a post',
  'splice at midspan': 'Midway between posts',
  'splice elsewhere': 'Elsewhere',
  'upstream panel over': 'Upstream panel on the traffic side',
  'downstream panel over': 'Downstream panel on the traffic side',
  'no curb': 'No curb',
  curb: 'A curb',
  'new slot without zinc': 'A new slot without zinc',
  'new slot badly cut': 'A new slot of another size, rough or torch-cut',
  'old slot enlarged': 'The old slot enlarged',
}
