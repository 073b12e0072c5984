export const sorts = ['route', 'visit', 'findings'] as const
export const acceptances = ['acceptable', 'acceptable except', 'not acceptable', 'not yet known'] as const

/** What of the list somebody wants to see. */
export interface ListWish {
  /** Words that all have to be found in name, route, station or who was there last. */
  readonly search: string
  /** Null for every state. */
  readonly acceptance: (typeof acceptances)[number] | null
  /** Null for every project. */
  readonly project: string | null
  /** Those put away, instead of those in use. */
  readonly archived: boolean
  readonly sort: (typeof sorts)[number]
}

/** The wish in an address; what is not said there, or not known, is as at the start. */
export function readWish(search: string): ListWish {
  const said = new URLSearchParams(search)
  return {
    search: said.get('search') ?? '',
    acceptance: acceptances.find((one) => one === said.get('acceptance')) ?? null,
    project: said.get('project'),
    archived: said.has('archived'),
    sort: sorts.find((one) => one === said.get('sort')) ?? 'route',
  }
}

/** The same as the end of an address: empty, or with its question mark. */
export function printWish({ search, acceptance, project, archived, sort }: ListWish): string {
  const said = new URLSearchParams({
    ...(search === '' ? {} : { search }),
    ...(acceptance === null ? {} : { acceptance }),
    ...(project === null ? {} : { project }),
    ...(archived ? { archived: '' } : {}),
    ...(sort === 'route' ? {} : { sort }),
  }).toString()
  return said === '' ? '' : `?${said}`
}
