import type { elevation as english } from '../../en/drawings/elevation.ts'

export const elevation: typeof english = {
  title: (run) => `Alzado de ${run}`,
  description: (units, pieces, notes) =>
    `El tramo visto de frente a la baranda, con el extremo de aguas arriba a la izquierda: ${units.join('; después ')}; ${pieces}. ${notes.join(' ')}`,
  measure:
    'Alzado: las distancias a lo largo de la baranda y las alturas sobre la rasante están a la misma escala. Aguas arriba a la izquierda.',
  unitHeight: (unit, limits) => `${unit}: ${limits}`,
  heights: (limits) =>
    `Borde superior de la baranda sobre la rasante, como dicen las fichas: ${limits.join('; ')}. La rasante se dibuja horizontal.`,
  notes: [
    'Los postes se cortan en el suelo: las fichas no dicen su longitud. El abocinado se desarrolla en línea recta: sus desvíos están en la franja.',
    'El perfil de la baranda y los anchos de postes y bloques se dibujan según la práctica común; cabeza, cable de anclaje y puente son signos.',
    'Con aguas arriba a la izquierda, una baranda a la derecha de su tránsito se ve por detrás, y una a la izquierda, desde el lado del tránsito.',
  ],
}
