import { definedTypes, entities, enumerations, selects } from './ifc-schema.ts'
import { type Instance, readStep, type StepFile, type Value } from './step-reader.ts'

interface Attribute {
  readonly name: string
  readonly isOptional: boolean
  readonly isDerived: boolean
  /** Null for one value. */
  readonly members: { readonly least: number; readonly most: number } | null
  readonly type: string
}

interface Entity {
  readonly name: string
  readonly parent: string | null
  readonly isAbstract: boolean
  readonly own: readonly Attribute[]
}

const schema = new Map(
  entities
    .trim()
    .split('\n')
    .map(readEntity)
    .map((entity) => [entity.name.toUpperCase(), entity]),
)

/** What is wrong with a file by the table of the schema and by rules of it that no table states; empty when nothing is. */
export function checkIfc(file: string): readonly string[] {
  let step: StepFile
  try {
    step = readStep(file)
  } catch (error) {
    return [(error as Error).message]
  }
  return [
    ...(step.schema === 'IFC4X3_ADD2' ? [] : [`another schema: ${step.schema}`]),
    ...[...step.instances].flatMap(([number, instance]) =>
      checkInstance(step, instance).map((problem) => `#${number} ${instance.entity}: ${problem}`),
    ),
    ...checkIdentities(step),
    ...checkProducts(step),
    ...checkTree(step),
  ]
}

function readEntity(line: string): Entity {
  const [, abstract, name, parent, attributes] = /^(-?)(\w+)(?: < (\w+))?: ?(.*)$/.exec(line)!
  const own = attributes!
    .split(', ')
    .filter((one) => one !== '')
    .map((one): Attribute => {
      if (one.startsWith('*'))
        return { name: one.slice(1), isOptional: false, isDerived: true, members: null, type: '' }
      const [, attribute, optional, least, most, type] = /^(\w+)(\??) (?:\[(\d+):(\d+|\?)\] )?(\w+)$/.exec(one)!
      const members = least === undefined ? null : { least: Number(least), most: most === '?' ? 1e9 : Number(most) }
      return { name: attribute!, isOptional: optional === '?', isDerived: false, members, type: type! }
    })
  return { name: name!, parent: parent ?? null, isAbstract: abstract === '-', own }
}

/** All attributes in the order of the file, those of the supertypes first. */
function attributesOf(name: string): readonly Attribute[] {
  const entity = schema.get(name.toUpperCase())!
  const inherited = entity.parent === null ? [] : attributesOf(entity.parent)
  const rederived = entity.own.filter(({ isDerived }) => isDerived)
  return [
    ...inherited.map((one) => rederived.find((other) => other.name === one.name) ?? one),
    ...entity.own.filter(({ isDerived }) => !isDerived),
  ]
}

function isA(entity: string, type: string): boolean {
  const found = schema.get(entity.toUpperCase())
  if (found === undefined) return false
  return found.name.toUpperCase() === type.toUpperCase() || (found.parent !== null && isA(found.parent, type))
}

function checkInstance(step: StepFile, { entity, values }: Instance): readonly string[] {
  const known = schema.get(entity)
  if (known === undefined) return ['no entity of the table']
  if (known.isAbstract) return ['is abstract']
  const attributes = attributesOf(entity)
  if (attributes.length !== values.length) return [`${values.length} values for ${attributes.length} attributes`]
  return attributes.flatMap((attribute, i) => {
    const problem = checkAttribute(step, attribute, values[i]!)
    return problem === null ? [] : [`${attribute.name}: ${problem}`]
  })
}

function checkAttribute(step: StepFile, attribute: Attribute, value: Value): string | null {
  if (attribute.isDerived) return value.kind === 'derived' ? null : 'is to be derived'
  if (value.kind === 'derived') return 'is not derived'
  if (value.kind === 'unset') return attribute.isOptional ? null : 'is missing'
  if (attribute.members === null) return checkValue(step, attribute.type, value)
  if (value.kind !== 'list') return 'is no list'
  const { least, most } = attribute.members
  if (value.values.length < least || value.values.length > most) return `${value.values.length} members`
  return value.values.map((one) => checkValue(step, attribute.type, one)).find((problem) => problem !== null) ?? null
}

function checkValue(step: StepFile, type: string, value: Value): string | null {
  const literals = enumerations[type]
  if (literals !== undefined) {
    const isKnown = value.kind === 'enumeration' && literals.split(' ').includes(value.literal)
    return isKnown ? null : `no ${type}`
  }
  const members = selects[type]
  if (members !== undefined) {
    if (value.kind === 'typed') {
      const member = members.find((one) => one.toUpperCase() === value.type)
      return member === undefined ? `${value.type} is no ${type}` : checkValue(step, member, value.value)
    }
    if (value.kind !== 'reference') return `a ${type} without its type`
    const problems = members.map((member) => checkValue(step, member, value))
    return problems.includes(null) ? null : problems.join(' and ')
  }
  const base = definedTypes[type]
  if (base !== undefined) return checkSimple(base, value) ? null : `no ${type}`
  if (type === 'INTEGER') return value.kind === 'integer' ? null : 'no INTEGER'
  if (!schema.has(type.toUpperCase())) throw new Error(`the table does not say what ${type} is`)
  if (value.kind !== 'reference') return 'is no reference'
  const target = step.instances.get(value.to)
  if (target === undefined) return `#${value.to} is nowhere`
  return isA(target.entity, type) ? null : `#${value.to} is no ${type}`
}

function checkSimple(base: string, value: Value): boolean {
  switch (base) {
    case 'STRING':
      return value.kind === 'string'
    case 'STRING(255)':
      return value.kind === 'string' && [...value.text].length <= 255
    case 'INTEGER':
      return value.kind === 'integer'
    case 'REAL':
      return value.kind === 'real'
    case 'REAL>0':
      return value.kind === 'real' && value.number > 0
    case 'REAL>=0':
      return value.kind === 'real' && value.number >= 0
    case 'BOOLEAN':
      return value.kind === 'enumeration' && /^[TF]$/.test(value.literal)
    case 'LOGICAL':
      return value.kind === 'enumeration' && /^[TFU]$/.test(value.literal)
    default:
      return false
  }
}

/** The value of an attribute. */
export function attributeOf({ entity, values }: Instance, name: string): Value {
  const index = attributesOf(entity).findIndex((attribute) => attribute.name === name)
  if (index < 0) throw new Error(`${entity} has no ${name}`)
  return values[index]!
}

/** The instances that an attribute refers to. */
export function referredTo(instance: Instance, name: string): readonly number[] {
  const value = attributeOf(instance, name)
  const all = value.kind === 'list' ? value.values : [value]
  return all.flatMap((one) => (one.kind === 'reference' ? [one.to] : []))
}

/** Every instance of a type, supertypes counted. */
export const allOf = ({ instances }: StepFile, type: string): readonly (readonly [number, Instance])[] =>
  [...instances].filter(([, { entity }]) => isA(entity, type))

/** GlobalIds: 22 characters of the alphabet, 128 bits, none twice. */
function checkIdentities(step: StepFile): readonly string[] {
  const seen = new Set<string>()
  return allOf(step, 'IfcRoot').flatMap(([number, instance]) => {
    const value = attributeOf(instance, 'GlobalId')
    const id = value.kind === 'string' ? value.text : ''
    const isWellFormed = /^[0-3][0-9A-Za-z_$]{21}$/.test(id)
    const isNew = !seen.has(id)
    seen.add(id)
    return isWellFormed && isNew ? [] : [`#${number}: GlobalId ${id} ${isWellFormed ? 'is used twice' : 'is none'}`]
  })
}

/** Rules of products: a shape has a placement, a type of one's own has a name, each shape belongs to one product. */
function checkProducts(step: StepFile): readonly string[] {
  const products = allOf(step, 'IfcProduct').flatMap(([number, instance]) => {
    const isSet = (name: string): boolean => attributeOf(instance, name).kind !== 'unset'
    const needsPlacement = isSet('Representation') || isA(instance.entity, 'IfcPositioningElement')
    const own = instance.values.some((value) => value.kind === 'enumeration' && value.literal === 'USERDEFINED')
    return [
      ...(needsPlacement && !isSet('ObjectPlacement') ? [`#${number} has no placement`] : []),
      ...(own && !isSet('ObjectType') ? [`#${number} has a type of its own without a name`] : []),
    ]
  })
  const shapes = allOf(step, 'IfcProductDefinitionShape').flatMap(([, one]) => referredTo(one, 'Representations'))
  const shared = shapes.filter((shape, i) => shapes.indexOf(shape) !== i)
  const sets = allOf(step, 'IfcPropertySet').flatMap(([number, set]) => {
    const names = referredTo(set, 'HasProperties').map((property) => {
      const name = attributeOf(step.instances.get(property)!, 'Name')
      return name.kind === 'string' ? name.text : ''
    })
    return new Set(names).size === names.length ? [] : [`#${number} has a property twice`]
  })
  return [...products, ...shared.map((shape) => `#${shape} is a shape of two`), ...sets]
}

/** Every object but the project has one whole that it is part of, nested in or contained in. */
function checkTree(step: StepFile): readonly string[] {
  const parts = [
    ...allOf(step, 'IfcRelDecomposes').flatMap(([, one]) => referredTo(one, 'RelatedObjects')),
    ...allOf(step, 'IfcRelContainedInSpatialStructure').flatMap(([, one]) => referredTo(one, 'RelatedElements')),
  ]
  return allOf(step, 'IfcObjectDefinition').flatMap(([number, { entity }]) => {
    const wholes = parts.filter((part) => part === number).length
    const expected = entity === 'IFCPROJECT' ? 0 : 1
    return wholes === expected ? [] : [`#${number} ${entity} has ${wholes} wholes`]
  })
}
