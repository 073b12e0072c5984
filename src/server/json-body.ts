import type { FastifyInstance } from 'fastify'
import type { InputProblem } from '../formats/input-problem.ts'
import { findJsonFault } from '../formats/json-fault.ts'

/** A request whose body is no JSON document that files could hold. */
export class NoJson extends Error {
  constructor(readonly problem: InputProblem) {
    super('no JSON document')
  }
}

/**
 * Bodies are read by the rules of our files: nested so deep that whoever walks through them would run out of stack, or
 * with a field twice, they are refused.
 */
export function readJsonSafely(app: FastifyInstance): void {
  const parse = app.getDefaultJsonParser('error', 'error')
  app.removeContentTypeParser('application/json')
  app.addContentTypeParser('application/json', { parseAs: 'string' }, (request, body, done) => {
    const text = String(body)
    const fault = findJsonFault(text)
    if (fault === null) return parse(request, text, done)
    const { line, column, expected, found } = fault
    done(new NoJson({ file: 'request', place: `line ${line}, column ${column}`, expected, found }))
  })
}
