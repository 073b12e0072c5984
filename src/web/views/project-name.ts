import { asWritten, m } from '../messages.ts'

/** The server's own projects by a word of the page, others as they are called. */
export const projectName = (project: string): string =>
  project === 'demo' ? m.runs.demo : project === 'own' ? m.runs.own : asWritten(project)
