/** The words of the trade in English: each term, and what it means in a sentence or two. No number that a sheet decides. */
export const glossaryEn = {
  title: 'Words of the trade',
  how: 'What the words on cards, sheets and records mean. Numbers in the figures are those of an example sheet; which hold at a run stands on its cards.',
  search: 'Find a word',
  none: 'No word begins or goes so.',
  more: 'All words of the trade',
  back: 'All runs',
  terms: {
    adjacentTraffic: [
      'Adjacent traffic',
      'The traffic in the lane beside the rail. Upstream is where it comes from, downstream where it goes.',
    ],
    anchorCable: [
      'Anchor cable',
      'The wire rope that holds the rail to the first posts of an end unit, so that the run can be pulled tight when it is struck beyond them.',
    ],
    bearingPlate: [
      'Bearing plate',
      'The plate through which the anchor cable pulls on post 1. Its hole is off the middle, so it matters which way up it stands.',
    ],
    block: [
      'Offset block',
      'The block between post and rail. It keeps wheels away from the post; at some posts of an end unit none may be.',
    ],
    breakawayPost: [
      'Breakaway post',
      'A post made to fold or break when it is struck from its end, so that the unit works as in its test.',
    ],
    bridgeEnd: [
      'Bridge end',
      'A unit that ends a run at the rail or parapet of a bridge, and grows stiffer toward it.',
    ],
    bracket: [
      'Cable anchor bracket',
      'The piece on the back of the rail from which the anchor cable pulls. It must let go of the rail when the head is pushed along it.',
    ],
    buriedEnd: ['Buried end', 'A run that ends in the slope of a cut, so that nobody can strike its end.'],
    clearZone: [
      'Clear zone',
      'The width beside the travelled way that is kept free of hazards, so that who leaves the road can stop or come back.',
    ],
    crashworthy: [
      'Crashworthy',
      'Tested by crash to criteria in force, so that it may stand where traffic can strike it.',
    ],
    criteria: [
      'Criteria, test level',
      'The rules by which hardware is crash tested, and how severe the test was. A level reached under older criteria says nothing about newer ones.',
    ],
    datum: ['Datum', 'The point of a run from which its lengths count. Its station places the run on the road.'],
    energyAbsorbing: [
      'Energy-absorbing',
      'Of a terminal: it slows a vehicle that strikes it head-on by bending or crushing rail.',
    ],
    finishGrade: ['Finish grade', 'The surface of the ground as it is meant to stay. Heights are measured from it.'],
    flare: ['Flare', 'Where the rail leaves its line away from traffic, along so much for each foot or metre across.'],
    gating: [
      'Gating',
      'Of a terminal: a vehicle that strikes it before its length of need begins passes through, behind the rail. So the ground behind must be clear.',
    ],
    gradingPlatform: [
      'Grading platform',
      'The nearly level ground round an end unit, on which a vehicle meets it upright.',
    ],
    guardBand: [
      'Guard band',
      'A strip along a limit as wide as the doubt of a reading. A value inside it is too close to tell.',
    ],
    head: ['Impact head', 'The piece at the very end of a terminal that a vehicle strikes and pushes along the rail.'],
    hinge: ['Hinge', 'The joint of a breakaway post between its upper and its lower part. It folds one way only.'],
    holdPoint: ['Hold point', 'What later work covers, and must be seen before.'],
    lap: [
      'Lap',
      'Which panel lies on the traffic side at a splice. Laid the wrong way, its edge faces traffic and catches.',
    ],
    lengthOfNeed: [
      'Length of need',
      'The stretch that must be shielded so that a vehicle that leaves the road does not reach the hazard.',
    ],
    nested: ['Nested rail', 'Two panels, one in the other, where the rail spans a gap.'],
    omittedPost: [
      'Post left out',
      'A post that cannot stand where something is in the ground. The sheet says whether one may be, and what then changes beside the gap.',
    ],
    panel: [
      'Panel',
      'One piece of rail. Its length is from splice to splice; the piece itself is about a foot longer.',
    ],
    postSlots: [
      'Slots of a post',
      'Open slots in which the rail hangs without a bolt. Which set is used fixes its height.',
    ],
    postSpacing: ['Post spacing', 'From centre to centre of two posts along the rail. Closer posts make it stiffer.'],
    railBolt: [
      'Post bolt',
      'The bolt that holds the rail to a post. It is meant to let the rail go when a post is struck down, so no washer lies on the face of the rail.',
    ],
    railHeight: [
      'Height of rail',
      'From finish grade to the top of the rail at its face. Too low, a vehicle goes over; too high, under.',
    ],
    runoutLength: [
      'Runout length',
      'How far along the road a vehicle that left it needs to stop. Length of need is found with it.',
    ],
    shyLine: [
      'Shy line',
      'How far from the travelled way a barrier must stand so that drivers do not slow or move away from it.',
    ],
    // What slots along a rail do: Transportation Research Record 1500, 1995, pages 43 to 51.
    slottedPanel: [
      'Slotted panel',
      'A panel with a row of slots along its middle, that let it buckle at a lower force when its end is struck and leave its strength in tension. It belongs where its sheet has it and nowhere else.',
    ],
    soilTube: ['Soil tube', 'The tube in the ground in which a post of an end unit stands.'],
    splice: [
      'Splice',
      'Where two panels are bolted together. Some systems have it at a post, others midway between two.',
    ],
    station: ['Station', 'Distance along the line of the road.'],
    straightness: ['Straightness', 'How far the middle of a panel lies off the line between its ends.'],
    strut: ['Ground strut', 'The bar at the ground between posts 1 and 2 that makes them pull together.'],
    stub: [
      'Stub',
      'What of a breakaway post stays in the ground when the upper part is gone. It must be low enough to pass over.',
    ],
    tangent: [
      'Tangent, flared',
      'A tangent terminal goes on in the line of the run; a flared one leaves it, away from traffic.',
    ],
    terminal: ['Terminal', 'The crash-tested end of a run that traffic can strike.'],
    trailingAnchor: [
      'Trailing anchor',
      'What holds the end of a run that traffic leaves. It is not made to be struck head-on.',
    ],
    uncertainty: [
      'Uncertainty',
      'How far a reading can lie from the true value, by instrument and way of reading. It belongs to each verdict.',
    ],
    workingWidth: ['Working width', 'The room that a barrier needs behind its face when it is struck.'],
  },
} as const satisfies GlossaryWords

export interface GlossaryWords {
  readonly title: string
  readonly how: string
  readonly search: string
  readonly none: string
  readonly more: string
  readonly back: string
  /** Each with what it means. */
  readonly terms: Readonly<Record<string, readonly [string, string]>>
}

export type TermId = keyof typeof glossaryEn.terms
