/** Shown on every record and in the foot of every page. */
export const cautions: readonly string[] = [
  "This is not a design and not a crash test. The agency's standard drawing and specification and the terminal maker's manual in force at letting govern; where they differ from what is shown here, stop and ask the engineer.",
  'The shipped hardware sheets are examples; replace them by sheets written from the documents in force. A limit marked "from memory" has not been checked against any document.',
  'Acceptance is signed by a person, an engineer licensed where the law asks for one; this tool signs nothing.',
  'A value within the uncertainty of its measurement is not a pass.',
  'Call the one-call utility service before any post is driven or pulled, and wait for its marks.',
  'Work behind the traffic control that the plan calls for; never kneel in or beside a live lane to read a height.',
  "An anchor cable is under load, driven posts and cut edges injure: wear the protection the work calls for. An exposed end or open gap at day's end must be protected.",
]
