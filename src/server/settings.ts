import { err, ok, type Result } from '../core/result.ts'

export interface Settings {
  /** 0 for any free one. */
  readonly port: number
  readonly host: string
  /** Folder of the embedded database. */
  readonly dataFolder: string
}

export interface SettingProblem {
  readonly setting: string
  readonly expected: string
  readonly found: string
}

/** What the environment sets, with defaults for the rest; or every setting that makes no sense. */
export function readSettings(
  environment: Readonly<Record<string, string | undefined>>,
): Result<Settings, readonly SettingProblem[]> {
  const port = environment.LAPWISE_PORT ?? '4310'
  const host = environment.LAPWISE_HOST ?? '127.0.0.1'
  const dataFolder = environment.LAPWISE_DATA ?? './data'
  const problems: SettingProblem[] = []
  if (!/^\d{1,5}$/.test(port) || Number(port) > 65_535)
    problems.push({ setting: 'LAPWISE_PORT', expected: 'a whole number from 0 (any free port) to 65535', found: port })
  if (host.trim() === '' || /\s/.test(host))
    problems.push({ setting: 'LAPWISE_HOST', expected: 'an address such as 127.0.0.1', found: host })
  if (dataFolder.trim() === '')
    problems.push({ setting: 'LAPWISE_DATA', expected: 'the path of a folder', found: dataFolder })
  return problems.length > 0 ? err(problems) : ok({ port: Number(port), host, dataFolder })
}
