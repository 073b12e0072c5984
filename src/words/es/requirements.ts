import type { PlainChoice, RequirementSaying } from '../../core/requirements/requirement-saying.ts'
import type { Printers } from '../print.ts'
import { slotSize } from '../slot-size.ts'
import { theirNames } from '../their-names.ts'
import { byTopic } from '../topics.ts'
import { upperFirst } from '../upper-first.ts'
import { neededTestName } from './hardware.ts'

/** What follows from layout, sheets and run file: what must be true, how to look, why, what else to do. */
export const requirements: Printers<RequirementSaying> = {
  must: byTopic<'must'>({
    block: ({ block }) => (block ? 'El poste lleva un bloque separador.' : 'El poste no lleva bloque separador.'),
    'post-kind': ({ postKind }, print) => `El poste es un ${print.say(postKind)}.`,
    'rail-bolt': ({ bolted }) =>
      bolted
        ? 'La baranda está atornillada al poste, sin arandela en su cara.'
        : 'La baranda no está atornillada al poste.',
    'hinge-side': ({ side }) => `El perno de bisagra está del lado ${hingeSides[side]}.`,
    'slot-set': ({ set, side }) =>
      `La baranda está sujeta en las ranuras ${sets[set]} abiertas del poste, en su lado ${sides[side]}.`,
    'slotted-panel': ({ name, inches }, print) =>
      `El panel es el ${print.say(name)}, de ${print.feetInches(inches)} de largo, con una fila de ranuras de ${print.length(4, 'in')} a lo largo.`,
    'panel-length': ({ inches, isAdapter }, print) =>
      isAdapter
        ? `El último panel antes del tramo mide ${print.feetInches(inches)}, lo que lleva los empalmes a su sitio.`
        : `El panel mide ${print.feetInches(inches)}, de empalme a empalme.`,
    nested: 'Aquí hay dos paneles, uno dentro del otro.',
    'splice-position': ({ position }) =>
      position === 'post' ? 'El empalme está en un poste.' : 'El empalme está a media distancia entre dos postes.',
    lap: ({ over }) =>
      over === 'upstream'
        ? 'El panel de aguas arriba queda del lado del tránsito en el empalme, de modo que su borde no apunta al tránsito contiguo.'
        : 'El panel de aguas abajo queda del lado del tránsito en el empalme, hacia el extremo del terminal.',
    'rail-height': ({ limits }, print) =>
      `La parte superior de la baranda está ${print.say(limits)} sobre la rasante terminada.`,
    'stub-height': ({ limits }, print) =>
      `El poste inferior (muñón) sobresale ${print.say(limits)} de la rasante terminada.`,
    straightness: ({ limits }, print) =>
      `El panel es recto: su centro está ${print.say(limits)} de la línea entre sus extremos.`,
    'flare-offset': ({ limits, isFlared }, print) =>
      `El poste 1 está ${print.say(limits)} fuera de la línea ${isFlared ? 'abocinada del tramo antes del extremo, prolongada' : 'del tramo'}, del lado opuesto al tránsito.`,
    spacing: ({ inches, omitted }, print) => {
      const apart = `Los postes están a ${print.feetInches(inches)} uno de otro, de centro a centro`
      if (omitted === null) return `${apart}.`
      const posts = omitted.posts === 1 ? 'se omite un poste' : `se omiten ${omitted.posts} postes`
      return `${apart} (${posts} por ${theirNames(omitted.obstructions, print)}).`
    },
    curb: ({ obstructions }, print) =>
      `No hay bordillo delante de la baranda donde se omiten postes por ${theirNames(obstructions, print)}.`,
    'new-slot': ({ slot }) =>
      `La baranda está atornillada al poste movido por una ranura nueva de ${slotSize(slot)}, de corte liso y rociada con zinc; la ranura vieja queda como se hizo.`,
    criteria: 'Un ensayo de choque de los herrajes cubre los criterios vigentes para la obra y la velocidad de la vía.',
    crashworthy: ({ end }) =>
      end === 'approach'
        ? 'El extremo que el tránsito contiguo encuentra primero está ensayado a choque.'
        : 'El extremo está ensayado a choque, o el tránsito contrario no puede alcanzarlo.',
    need: 'La baranda que cuenta cubre todo el trecho que hay que proteger.',
    'rest-of-run': 'El tramo está bien de un extremo al otro, y es bastante largo.',
    'end-hardware': 'Se conoce por su ficha lo que termina el tramo.',
    'end-joins': 'La unidad de extremo está en un sistema al que se une según su ficha.',
    location: 'Se sabe dónde está el tramo.',
    'post-count': 'Está cada poste que piden las fichas.',
    'panel-count': 'Está colgado cada panel que piden las fichas de los extremos.',
    'site-check': ({ what, limit }, print) => `${upperFirst(print.say(what))}: ${print.say(limit)}.`,
  }),

  'how to look': byTopic<'how to look'>({
    block: 'Mire entre la baranda y el poste.',
    'post-kind': 'Mire el poste entero; si es de madera, golpéelo y busque pudrición a ras de suelo.',
    'rail-bolt': 'Mire la cara de la baranda frente al poste.',
    'hinge-side': 'Mire de lado la unión del poste superior y el inferior.',
    'slot-set': 'Mire la parte de atrás de la baranda donde toca el poste.',
    'slotted-panel': 'Mire a lo largo del centro del panel.',
    'panel-length':
      'Mida de centro de empalme a centro de empalme, no de punta a punta de la chapa: un panel mide en total cerca de un pie más.',
    nested: 'Mire el borde de la baranda desde abajo.',
    'splice-position': 'Póngase de frente a la baranda y mire dónde están los tornillos del empalme.',
    lap: 'Mire la cara desde aguas arriba: ningún borde puede apuntarle a usted.',
    straightness: ({ measured }, print) =>
      `${print.say(measured)}; o lea desde un solo hilo la distancia lateral de cada poste, y diga el lado de cada una.`,
    'flare-offset': ({ measured }, print) =>
      `${print.say(measured)}; mire a lo largo del tramo o tienda un hilo junto a dos de sus postes por lo menos, y diga el lado.`,
    spacing: ({ measured }, print) =>
      `${print.say(measured)}; o tienda una sola cinta desde el poste 1 y lea en ella cada poste.`,
    curb: 'Mire a lo largo del borde del pavimento delante del hueco.',
    'new-slot': 'Mire la cara y la espalda de la baranda en el poste movido y donde habría estado el poste.',
    criteria:
      'Compare la fecha de adjudicación, la clase de obra y la velocidad con los ensayos de la ficha; no hay nada que medir.',
    crashworthy: 'Compare la ficha del extremo con el tránsito que puede alcanzarlo; no hay nada que medir.',
    need: 'Compare el tramo con la necesidad de su sitio: vía, tránsito, peligros. En la baranda no se ve.',
    'rest-of-run': 'Recorra el tramo hasta su otro extremo y cuente sus paneles y postes.',
    'end-hardware': 'Averigüe qué herraje es, por los registros del dueño o por sus marcas, y consiga su ficha.',
    'end-joins': 'Compare la altura y los empalmes del tramo con los de la unidad de extremo.',
    location:
      'Lea la estación de la marca más cercana de la vía, o tome la posición del aparato en la punta de la baranda.',
    'post-count': 'Cuente los postes y mida el espacio ancho.',
    'panel-count': 'Cuente los paneles de empalme a empalme.',
    'site-check':
      'Se halló a partir del sitio cuando se hizo de él el tramo; ninguna lectura lo decide de nuevo. Lo que se corrigió después lo aparta una persona con su nombre, y lo que se hizo es el motivo.',
  }),

  'why it matters': byTopic<'why it matters'>({
    block: ({ block }) =>
      block
        ? 'Sin el bloque, una rueda se engancha en el poste.'
        : 'Aquí un bloque impide que el poste se rompa como en el ensayo.',
    'post-kind': 'Solo el poste ensayado se dobla o se rompe como en el ensayo.',
    'rail-bolt': ({ bolted }) =>
      bolted
        ? 'Una baranda suelta se cae; una arandela impide que se suelte del poste como en el ensayo.'
        : 'Aquí un tornillo retiene la baranda cuando la cabeza tiene que moverse.',
    'hinge-side': 'Del lado equivocado el poste no se pliega como en el ensayo.',
    'slot-set': 'El juego de ranuras fija la altura de la baranda y la deja soltarse.',
    'slotted-panel':
      'Las ranuras hacen que el panel se doble con menos fuerza cuando golpean el extremo, y le dejan su resistencia a la tracción; un panel sin ranuras resiste mucho más.',
    'panel-length': 'Un panel de otra longitud desplaza todos los empalmes que siguen.',
    nested: 'Aquí la baranda salva un hueco y se ensayó doble.',
    'splice-position': 'El sistema se ensayó con sus empalmes ahí; en otro sitio la baranda se rasga por el empalme.',
    lap: 'Un borde que apunta al tránsito engancha un vehículo y abre el empalme.',
    'rail-height': 'Demasiado baja, un vehículo pasa por encima; demasiado alta, pasa por debajo o se engancha.',
    'stub-height': 'Un vehículo pasa sobre el muñón cuando el poste se rompe; uno más alto le engancha el piso.',
    straightness:
      'El terminal se ensayó con paneles rectos; uno curvo se pandea fuera de línea cuando golpean la cabeza.',
    'flare-offset': 'El abocinado aleja la cabeza del tránsito y se ensayó con esta separación.',
    spacing: 'Más separados, la baranda se embolsa, y los tornillos ya no coinciden con las ranuras.',
    curb: 'Al pasar sobre un bordillo, un vehículo carga la baranda del hueco de otra manera que en el ensayo sin él; ahí se ha rasgado la baranda corriente.',
    'new-slot': 'Por una ranura áspera o agrandada se rasga la baranda bajo carga; ahí se oxida el acero sin zinc.',
    criteria:
      'Un nivel alcanzado con criterios anteriores no dice nada de los nuevos. Los herrajes existentes pueden cumplir su vida útil, a la velocidad que cubre su ensayo.',
    crashworthy:
      'Un extremo que no está hecho para ser golpeado detiene un vehículo de golpe, lo atraviesa o lo vuelca.',
    need: 'Un terminal correcto ante un tramo demasiado corto no protege nada: un vehículo pasa por detrás.',
    'rest-of-run': 'Un terminal solo resiste con el tramo detrás, y no prueba nada de él.',
    'end-hardware': 'Lo que no se conoce no se puede comparar con lo ensayado.',
    'end-joins': 'Una unidad se ensayó con baranda de su altura y sus empalmes.',
    location: 'Un registro que no nombra un lugar puede tomarse por el de otro tramo.',
    'post-count': 'Donde falta un poste la baranda se embolsa y se rasga.',
    'panel-count': 'Sin sus propios paneles una unidad de extremo no trabaja como en el ensayo.',
    'site-check':
      'Los herrajes trabajan como en el ensayo solo donde espacio, terreno, altura y tránsito son como los tuvieron sus ensayos.',
  }),

  'if it fails': byTopic<'if it fails'>({
    block: ({ block }) =>
      block ? 'Coloque el bloque separador.' : 'Quite el bloque separador y fije la baranda como muestra el manual.',
    'post-kind': ({ postKind }, print) => `Cambie el poste por un ${print.say(postKind)}.`,
    'rail-bolt': ({ bolted }) =>
      bolted ? 'Atornille la baranda al poste con cabeza de botón y sin arandela en la cara.' : 'Quite el tornillo.',
    'hinge-side': ({ side }) => `Pase el perno de bisagra al lado ${hingeSides[side]}.`,
    'slot-set': ({ set, side }) => `Ponga la baranda en las ranuras ${sets[set]} del lado ${sides[side]}.`,
    'slotted-panel': ({ name, inches }, print) =>
      `Cambie el panel por el ${print.say(name)}, de ${print.feetInches(inches)} de largo.`,
    'panel-length': ({ inches }, print) => `Cambie el panel por uno de ${print.feetInches(inches)}.`,
    nested: 'Añada el segundo panel.',
    'splice-position': 'Lleve el empalme a su sitio cambiando paneles.',
    lap: 'Desarme el empalme y solápelo al revés.',
    'rail-height': 'Suba o baje la baranda dentro de sus límites.',
    'stub-height': 'Baje el poste o vuelva a colocarlo.',
    straightness: 'Ponga los postes en línea recta entre los extremos del panel.',
    'flare-offset': ({ limits }, print) =>
      `Mueva el extremo hasta que quede a ${limits.nominal === 'notStated' ? print.say(limits) : print.quantity(limits.nominal, limits.unit)} de la línea, del lado opuesto al tránsito.`,
    spacing: ({ slots }, print) => `Mueva el poste. ${print.say(slots)}`,
    curb: ({ doubledInches }, print) =>
      doubledInches === null
        ? 'Disponga el tramo de nuevo y diga que hay un bordillo: la ficha no permite este hueco junto a un bordillo.'
        : `Disponga el tramo de nuevo y diga que hay un bordillo: entonces hay que doblar ${print.feetInches(doubledInches)} de baranda junto al hueco.`,
    'new-slot': ({ slot }) =>
      `Rocíe con zinc la ranura que no lo tenga. Donde la ranura sea áspera, de otro tamaño o una vieja agrandada, cambie el panel y corte una ranura nueva de ${slotSize(slot)}, lisa y rociada con zinc.`,
    criteria: ({ needed }) => `Elija herrajes con ${neededTestName(needed)}.`,
    crashworthy: 'Ponga en este extremo un terminal ensayado a choque.',
    need: 'Alargue el tramo, o mueva el extremo, hasta que la baranda que cuenta cubra la necesidad.',
    'rest-of-run': 'Revise el resto del tramo.',
    'end-hardware': 'Ponga ahí un herraje cuya ficha esté a mano, o consiga la ficha.',
    'end-joins': 'Averigüe cuál de los dos es lo que se creyó; si no, ponga ahí una unidad que se una a este sistema.',
    location: 'Averigüe dónde está el tramo.',
    'post-count':
      'Busque dónde falta un poste y colóquelo, o diga por qué obstáculo se omite y disponga el tramo de nuevo.',
    'panel-count': 'Cuelgue los paneles que pide la ficha del extremo.',
    'site-check': ({ change }, print) =>
      change === null
        ? 'Corrija lo que el sitio dice aquí, o elija herrajes correctos para él.'
        : `${upperFirst(print.say(change))}.`,
  }),
  'rail slots': ({ newSlotAt }) =>
    newSlotAt === null
      ? 'La ranura de la baranda no se puede agrandar en obra.'
      : `Ninguna ranura se puede agrandar en obra: el poste ${newSlotAt}, que la disposición mueve, recibe una nueva, como dice su propio requisito.`,

  choice: ({ is }) => choices[is],
  'choice of post': ({ postKind }, print) => `Un ${print.say(postKind)}, sano`,
  'choice of slots': ({ set, side }) => `En las ranuras ${sets[set]}${side === 'either' ? '' : `, ${sides[side]}`}`,
  'choice of panel': ({ inches }, print) => print.feetInches(inches),
  'choice of new slot': ({ slot }) => `Una ranura nueva de ${slotSize(slot)}, lisa, rociada con zinc`,
}

/** Sides of a post of an end unit. */
const sides = {
  upstream: 'hacia la cabeza',
  downstream: 'al lado opuesto de la cabeza',
  other: 'del otro lado',
} as const
const hingeSides = { upstream: 'de la cabeza', downstream: 'opuesto a la cabeza' } as const
const sets = { upper: 'superiores', lower: 'inferiores' } as const

const choices: Readonly<Record<PlainChoice, string>> = {
  'offset block': 'Un bloque separador',
  'no offset block': 'Sin bloque separador',
  'another kind of post': 'Otra clase de poste',
  'damaged post': 'Dañado, podrido o cortado',
  'bolted without washer': 'Atornillada, sin arandela en la cara',
  'bolted with washer': 'Atornillada con arandela en la cara',
  bolted: 'Atornillada',
  'not bolted': 'Sin atornillar',
  'toward the head': 'Hacia la cabeza',
  'away from the head': 'Al lado opuesto de la cabeza',
  'not held in slots': 'No sujeta en ranuras',
  slotted: 'Con ranuras',
  'not slotted': 'Sin ranuras',
  'another length': 'Otra longitud',
  nested: 'Doble',
  single: 'Sencillo',
  'splice at a post': 'En un poste',
  'splice at midspan': 'A media distancia entre postes',
  'splice elsewhere': 'En otro sitio',
  'upstream panel over': 'Panel de aguas arriba del lado del tránsito',
  'downstream panel over': 'Panel de aguas abajo del lado del tránsito',
  'no curb': 'Sin bordillo',
  curb: 'Un bordillo',
  'new slot without zinc': 'Una ranura nueva sin zinc',
  'new slot badly cut': 'Una ranura nueva de otro tamaño, áspera o cortada con soplete',
  'old slot enlarged': 'La ranura vieja agrandada',
}
