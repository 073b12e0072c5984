import type { RunFile } from '../formats/run/run-file.ts'

/**
 * Name of a document of a run without its ending: of which run, what for, of which day and version, so that none made
 * later takes its place.
 * @param day  as `2016-05-13`
 * @example documentFile({ name: 'Alder Creek, right' }, 'record', '2016-05-13')  // 'Alder-Creek-right-record-2016-05-13-v1'
 */
export const documentFile = (
  { name, version }: Pick<RunFile, 'name' | 'version'>,
  purpose: string,
  day: string,
): string => `${name.replaceAll(/[^\p{L}\p{N}]+/gu, '-')}-${purpose}-${day}-v${(version?.earlier.length ?? 0) + 1}`
