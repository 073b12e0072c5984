import type { GlossaryWords, TermId } from './glossary-en.ts'

/** Las palabras del oficio en español. */
export const glossaryEs = {
  title: 'Palabras del oficio',
  how: 'Lo que significan las palabras de fichas, tarjetas y registros. Las cifras de las figuras son las de una ficha de ejemplo; las que valen en un tramo están en sus tarjetas.',
  search: 'Buscar una palabra',
  none: 'Ninguna palabra es así.',
  more: 'Todas las palabras del oficio',
  back: 'Todos los tramos',
  terms: {
    adjacentTraffic: [
      'Tránsito contiguo',
      'El tránsito del carril junto a la baranda. Aguas arriba es de donde viene; aguas abajo, adonde va.',
    ],
    anchorCable: [
      'Cable de anclaje',
      'El cable que sujeta la baranda a los primeros postes de una unidad de extremo, para que el tramo pueda tensarse cuando lo golpean más allá de ellos.',
    ],
    bearingPlate: [
      'Placa de apoyo',
      'La placa por la que el cable de anclaje tira del poste 1. Su agujero no está en el centro: importa qué lado queda arriba.',
    ],
    block: [
      'Bloque separador',
      'El bloque entre poste y baranda. Aleja las ruedas del poste; en algunos postes de una unidad de extremo no puede haber ninguno.',
    ],
    breakawayPost: [
      'Poste de desprendimiento',
      'Un poste hecho para doblarse o romperse cuando lo golpean desde su extremo, para que la unidad trabaje como en su ensayo.',
    ],
    bridgeEnd: [
      'Extremo de puente',
      'Una unidad que termina el tramo en la baranda o el pretil de un puente, y es más rígida cuanto más cerca de él.',
    ],
    bracket: [
      'Soporte del cable',
      'La pieza de atrás de la baranda desde la que tira el cable. Tiene que soltarse de la baranda cuando la cabeza avanza por ella.',
    ],
    buriedEnd: [
      'Extremo enterrado',
      'Un tramo que termina dentro del talud de un corte, de modo que nadie puede golpear su extremo.',
    ],
    clearZone: [
      'Zona despejada',
      'El ancho junto a la calzada que se mantiene libre de peligros, para que quien se sale de la vía pueda parar o volver.',
    ],
    crashworthy: [
      'Ensayado a choque',
      'Ensayado según criterios vigentes, de modo que puede estar donde el tránsito lo alcanza.',
    ],
    criteria: [
      'Criterios, nivel de ensayo',
      'Las reglas con que se ensayan los herrajes a choque, y lo severo que fue el ensayo. Un nivel alcanzado con criterios anteriores no dice nada de los nuevos.',
    ],
    datum: [
      'Origen',
      'El punto de un tramo desde el que cuentan sus longitudes. Su estación sitúa el tramo en la vía.',
    ],
    energyAbsorbing: [
      'Absorbe energía',
      'De un terminal: frena un vehículo que lo golpea de frente, doblando o aplastando baranda.',
    ],
    finishGrade: ['Rasante terminada', 'La superficie del suelo como ha de quedar. Desde ella se miden las alturas.'],
    flare: [
      'Abocinado',
      'Donde la baranda deja su línea y se aleja del tránsito, tanto a lo largo por cada pie o metro a lo ancho.',
    ],
    gating: [
      'Traspasable',
      'De un terminal: un vehículo que lo golpea antes de que empiece su longitud de necesidad pasa detrás de la baranda. Por eso el suelo de atrás debe estar despejado.',
    ],
    gradingPlatform: [
      'Plataforma nivelada',
      'El suelo casi llano alrededor de una unidad de extremo, sobre el que un vehículo llega a ella derecho.',
    ],
    guardBand: [
      'Banda de guarda',
      'Una franja a lo largo de un límite, tan ancha como la duda de una lectura. Un valor dentro de ella es demasiado justo para decidir.',
    ],
    head: ['Cabeza de impacto', 'La pieza en la punta de un terminal que un vehículo golpea y empuja por la baranda.'],
    hinge: [
      'Bisagra',
      'La unión de un poste de desprendimiento entre su parte superior y la inferior. Se pliega hacia un solo lado.',
    ],
    holdPoint: ['Punto de espera', 'Lo que una obra posterior cubre, y debe verse antes.'],
    lap: [
      'Solape',
      'Qué panel queda del lado del tránsito en un empalme. Al revés, su borde apunta al tránsito y engancha.',
    ],
    lengthOfNeed: [
      'Longitud de necesidad',
      'El trecho que hay que proteger para que un vehículo que se sale de la vía no llegue al peligro.',
    ],
    nested: ['Baranda doble', 'Dos paneles, uno dentro del otro, donde la baranda salva un hueco.'],
    omittedPost: [
      'Poste omitido',
      'Un poste que no puede estar donde hay algo en el suelo. La ficha dice si se puede, y qué cambia entonces junto al hueco.',
    ],
    panel: [
      'Panel',
      'Una pieza de baranda. Su longitud va de empalme a empalme; la pieza en sí mide cerca de un pie más.',
    ],
    postSlots: [
      'Ranuras del poste',
      'Ranuras abiertas en las que cuelga la baranda sin tornillo. El juego que se usa fija su altura.',
    ],
    postSpacing: [
      'Espacio entre postes',
      'De centro a centro de dos postes a lo largo de la baranda. Con postes más juntos es más rígida.',
    ],
    railBolt: [
      'Tornillo del poste',
      'El tornillo que sujeta la baranda a un poste. Tiene que soltarla cuando el poste cae, y por eso no lleva arandela en la cara de la baranda.',
    ],
    railHeight: [
      'Altura de la baranda',
      'De la rasante terminada a la parte superior de la baranda en su cara. Demasiado baja, un vehículo pasa por encima; demasiado alta, por debajo.',
    ],
    runoutLength: [
      'Longitud de salida',
      'Lo que necesita para parar, a lo largo de la vía, un vehículo que se salió de ella. Con ella se halla la longitud de necesidad.',
    ],
    shyLine: [
      'Línea de recelo',
      'A qué distancia de la calzada debe estar una barrera para que los conductores no frenen ni se aparten.',
    ],
    slottedPanel: [
      'Panel ranurado',
      'Un panel con una fila de ranuras a lo largo del centro, que lo dejan pandear con menos fuerza cuando lo golpean por su extremo y le dejan su resistencia a la tracción. Va donde lo pide su ficha y en ningún otro sitio.',
    ],
    soilTube: ['Tubo hincado', 'El tubo en el suelo en el que está un poste de una unidad de extremo.'],
    splice: [
      'Empalme',
      'Donde se atornillan dos paneles. Unos sistemas lo llevan en un poste, otros a medio camino entre dos.',
    ],
    station: ['Estación', 'Distancia a lo largo de la línea de la vía.'],
    straightness: ['Rectitud', 'Cuánto se aparta el centro de un panel de la línea entre sus extremos.'],
    strut: ['Puntal a ras de suelo', 'La barra a ras de suelo entre los postes 1 y 2 que los hace tirar juntos.'],
    stub: [
      'Muñón',
      'Lo que queda en el suelo de un poste de desprendimiento cuando la parte superior ya no está. Debe ser bajo para pasar por encima.',
    ],
    tangent: [
      'Tangente, abocinado',
      'Un terminal tangente sigue la línea del tramo; uno abocinado la deja, alejándose del tránsito.',
    ],
    terminal: ['Terminal', 'El extremo de un tramo, ensayado a choque, que el tránsito puede golpear.'],
    trailingAnchor: [
      'Anclaje de salida',
      'Lo que sujeta el extremo de un tramo por donde sale el tránsito. No está hecho para ser golpeado de frente.',
    ],
    uncertainty: [
      'Incertidumbre',
      'Cuánto puede distar una lectura del valor verdadero, según instrumento y manera de leer. Es parte de cada dictamen.',
    ],
    workingWidth: ['Ancho de trabajo', 'El espacio que una barrera necesita detrás de su cara cuando la golpean.'],
  },
} as const satisfies GlossaryWords & { readonly terms: Readonly<Record<TermId, readonly [string, string]>> }
