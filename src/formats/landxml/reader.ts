import type { Point } from '../../core/geometry/point.ts'
import type { Metres } from '../../core/units/quantity.ts'
import type { InputProblem } from '../input-problem.ts'
import { listLimits, type RangeName, ranges } from '../range/ranges.ts'
import { childrenOf, type XmlElement } from './xml-tree.ts'

/** Reads attributes and points and collects what is wrong with them; a value that cannot be read is 0 or null. */
export class Reader {
  readonly problems: InputProblem[] = []
  private readonly file: string

  constructor(file: string) {
    this.file = file
  }

  fault(element: XmlElement, expected: string, found: string): void {
    this.problems.push({ file: this.file, place: element.place, expected, found })
  }

  attribute(element: XmlElement, name: string): string {
    const value = element.attributes[name]
    if (value === undefined) this.fault(element, `the attribute ${name} of ${element.name}`, 'none')
    return value?.trim() ?? ''
  }

  /** A number no larger than the most of its range, either way. */
  number(element: XmlElement, name: string, range: RangeName): number {
    const written = this.attribute(element, name)
    if (written === '') return 0
    const value = Number(written)
    const { most } = ranges[range]
    if (Math.abs(value) <= most) return value
    const expected = Number.isFinite(value) ? `${name} of at most ${most}` : `a number in ${name} of ${element.name}`
    this.fault(element, expected, written)
    return 0
  }

  /** Says when a list is longer than its limit. */
  count(element: XmlElement, list: 'alignments' | 'elements' | 'stationEquations', found: number): void {
    const most = listLimits[list]
    if (found > most) this.fault(element, `at most ${most} in the list`, String(found))
  }

  /** The point in the child `name`, written "northing easting" and perhaps an elevation. */
  point(element: XmlElement, name: string, long: (value: number) => Metres): Point | null {
    const child = childrenOf(element, name)[0]
    if (child === undefined) {
      this.fault(element, `${name} in ${element.name}`, 'none')
      return null
    }
    if (child.attributes.pntRef !== undefined) {
      this.fault(child, `the coordinates of ${name} written out`, `a reference to point ${child.attributes.pntRef}`)
      return null
    }
    const numbers = child.text.trim().split(/\s+/).map(Number)
    const [northing, easting] = numbers
    if (numbers.length < 2 || numbers.length > 3 || !numbers.every(Number.isFinite)) {
      this.fault(child, `"northing easting" in ${name}`, JSON.stringify(child.text.trim()))
      return null
    }
    const { most } = ranges.coordinate
    if (numbers.some((one) => Math.abs(one) > most)) {
      this.fault(child, `coordinates of at most ${most}`, JSON.stringify(child.text.trim()))
      return null
    }
    return { easting: long(easting!), northing: long(northing!) }
  }
}
