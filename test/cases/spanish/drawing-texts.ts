import type { Drawing, Item } from '../../../src/drawing/drawing.ts'

/** Every text of a drawing: seen, and read out. */
export const drawingTexts = ({ title, description, items }: Drawing): string[] => [
  title,
  description,
  ...textsOf(items),
]

const textsOf = (items: readonly Item[]): string[] =>
  items.flatMap((item) => {
    switch (item.kind) {
      case 'text':
      case 'dimension':
        return [item.text]
      case 'group':
        return [item.title, ...textsOf(item.items)]
      default:
        return []
    }
  })
