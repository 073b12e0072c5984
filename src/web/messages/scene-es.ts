import type { SceneWords } from './scene-en.ts'

/** What is said in a scene, in Spanish. */
export const sceneEs: SceneWords = {
  title: (run) => `${run} en tres dimensiones`,
  how: 'Arrastre para girar, pellizque o use la rueda para acercarse, toque una pieza para ir a su lugar. Teclas: las flechas giran, + y - acercan y alejan, Re Pág y Av Pág van de lugar en lugar.',
  places: 'Lugares del tramo',
  previous: 'Lugar anterior',
  next: 'Lugar siguiente',
  from: 'Visto desde',
  fromRoad: 'La vía',
  behind: 'Detrás',
  size: 'Alturas y distancias laterales',
  times: (factor) => (factor === 1 ? 'Reales' : `× ${factor}`),
  exaggerated: (factor) =>
    `Las alturas y las distancias laterales están ${factor} veces más lejos de lo pedido que lo leído.`,
  truly: 'Como se leyó, en tamaño real; lo que nadie leyó está como se pidió.',
  unknown: {
    flare: 'La ficha de un extremo no indica la distancia lateral de su abocinado: la baranda se dibuja recta allí.',
    'places of posts': 'Los postes solo se contaron: se dibujan a su separación; no se sabe dónde está cada uno.',
  },
  practice: 'Práctica: el tramo como está, con sus fallas. Sus colores son los de sus propias lecturas.',
  signs: 'Una forma que ninguna ficha indica se dibuja sencilla, como signo; la vía y el terreno también son signos.',
  measure: 'Medir',
  tools: { tape: 'Cinta', level: 'Nivel', 'string line': 'Hilo' },
  touch: {
    tape: (left) => (left === 2 ? 'Toque dos puntos.' : 'Toque el segundo punto.'),
    level: () => 'Toque un punto: se lee su altura sobre la rasante terminada.',
    'string line': (left) =>
      left === 3
        ? 'Toque los dos extremos del hilo y después un tercer punto.'
        : left === 2
          ? 'Toque el otro extremo del hilo.'
          : 'Toque el punto cuya distancia lateral se busca.',
  },
  measured: (length, doubt) => `${length} ± ${doubt}`,
  save: 'Guardar como archivo glTF',
  toRequirement: 'A sus requisitos',
  none: 'Este dispositivo o navegador no dibuja escenas. La tira de arriba y las figuras del recorrido muestran los mismos lugares.',
  lost: 'El dispositivo ha retirado el dibujo por un momento. La lista sigue; la escena vuelve sola.',
}
