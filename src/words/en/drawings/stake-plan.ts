/** The stakes at their coordinates. */
export const stakePlan = {
  title: (run: string) => `Stakes of ${run}`,
  shows: (stakes: number, findings: number) =>
    `Plan of ${stakes} stakes with the face of rail and the alignment at their own coordinates${findings > 0 ? `, and ${findings} findings` : ''}.`,
  stake: (number: number, along: string, purpose: string) => `stake ${number}, ${along} from post 1: ${purpose}`,
  finding: (number: number, place: string) => `finding ${number}: ${place}`,
  found: (number: number, place: string, what: string) => `finding ${number}, ${place}: ${what}`,
}
