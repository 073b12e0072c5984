/** One thing wrong with what somebody handed in: where, what was expected, what stood there. */
export interface InputProblem {
  readonly file: string
  /** Line, column, row or path inside the file, as `road.speed`; empty for the file as a whole. */
  readonly place: string
  readonly expected: string
  readonly found: string
}

/** `site.json: road.speed: expected a number above 0, found -5` */
export function printProblem(problem: InputProblem): string {
  const place = problem.place === '' ? '' : `${problem.place}: `
  const found = problem.found === '' ? '' : `, found ${problem.found}`
  return `${problem.file}: ${place}expected ${problem.expected}${found}`
}
