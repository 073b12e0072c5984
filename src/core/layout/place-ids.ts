import type { Layout, LayoutPanel, LayoutPost, LayoutSplice } from './layout.ts'

/** A layout whose places have no names yet. */
export interface UnnamedLayout extends Omit<Layout, 'posts' | 'panels' | 'splices' | 'spaces' | 'endIds'> {
  readonly posts: readonly Omit<LayoutPost, 'id'>[]
  readonly panels: readonly Omit<LayoutPanel, 'id'>[]
  readonly splices: readonly Omit<LayoutSplice, 'id'>[]
}

/** The layout with the ids that places have in the first version of a run: their kind and number. */
export function withFirstIds(layout: UnnamedLayout): Layout {
  const { posts, panels, splices } = layout
  return {
    ...layout,
    posts: posts.map((post) => ({ ...post, id: `post-${post.number}` })),
    spaces: posts.slice(1).map((after, i) => {
      const { number, alongInches } = posts[i]!
      return { id: `space-${number}`, number, fromInches: alongInches, toInches: after.alongInches }
    }),
    panels: panels.map((panel) => ({ ...panel, id: `panel-${panel.number}` })),
    splices: splices.map((splice) => ({ ...splice, id: `splice-${splice.number}` })),
    endIds: { first: 'first', second: 'second' },
  }
}
