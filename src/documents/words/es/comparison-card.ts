import type { comparisonCard as english } from '../en/comparison-card.ts'

/** What differs between two sheets. */
export const comparisonCard: typeof english = {
  title: 'Lo que difiere',
  what: 'De qué',
  why: 'Por qué importa:',
  notThere: 'no dice nada',
  same: 'Ambas dicen lo mismo.',
  besides: (texts, sources) =>
    `${[
      ...(texts === 0 ? [] : [`${texts} más ${texts === 1 ? 'se dice' : 'se dicen'} con otras palabras o dibujo`]),
      ...(sources === 0 ? [] : [`${sources} más ${sources === 1 ? 'viene' : 'vienen'} de otra fuente`]),
    ].join('; ')}.`,
}
