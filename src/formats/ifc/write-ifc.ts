import { addAlignment } from './alignment.ts'
import { point3, shape } from './geometry.ts'
import { addProperties, aggregate, type IfcModel, openModel, placedAt } from './ifc-model.ts'
import type { IfcEndUnit, IfcFinding, IfcPanel, IfcPost, IfcRun } from './ifc-run.ts'
import { panelBodies, postBody } from './rail-shapes.ts'
import { printStep, type StepReference } from './step-file.ts'
import { enumeration, label, list, unset } from './step-values.ts'

export interface IfcOptions {
  /** ISO 8601 in UTC. */
  readonly at: string
  /** Empty when not said. */
  readonly author: string
  /** Hexadecimal SHA-256 of a text in UTF-8; the globally unique ids come from it. */
  readonly sha256: (content: string) => string
}

/**
 * The run as an exchange file of IFC 4.3: road and alignment, a railing of type guardrail made of panels (beams), posts
 * (members) and end units (assemblies), and its findings (annotations). The same input gives the same text.
 * @source ISO 16739-1:2024 (schema IFC4X3_ADD2)
 */
export function writeIfc(run: IfcRun, { at, author, sha256 }: IfcOptions): string {
  const model = openModel(run, sha256)
  const { step, root, project, ground } = model
  const site = root('IfcSite', 'site', { name: run.road }, [
    ...[unset, ground, unset, unset],
    enumeration('ELEMENT'),
    ...[unset, unset, unset, unset, unset],
  ])
  const road = root('IfcRoad', 'road', { name: run.road }, [
    ...[unset, ground, unset, unset],
    enumeration('ELEMENT'),
    unset,
  ])
  aggregate(model, 'site', site, [road])
  const alignment = addAlignment(model, run)
  aggregate(model, 'project', project, [site, alignment])
  root('IfcRelReferencedInSpatialStructure', 'road/alignment', {}, [list([alignment]), road])

  const railing = addRailing(model, run)
  const findings = run.findings.map((finding) => addFinding(model, finding))
  root('IfcRelContainedInSpatialStructure', 'road/contents', {}, [list([railing, ...findings]), road])
  root('IfcRelPositions', 'alignment/railing', {}, [alignment, list([railing])])
  const header = { description: 'A run of guardrail on its alignment', name: `${run.name}.ifc`, author }
  return printStep({ ...header, at: `${at.slice(0, 19)}Z`, schema: 'IFC4X3_ADD2' }, step)
}

function addRailing(model: IfcModel, run: IfcRun): StepReference {
  const railing = model.root('IfcRailing', 'run', { name: run.name }, [
    ...[unset, model.ground, unset, unset],
    enumeration('GUARDRAIL'),
  ])
  addProperties(model, 'run', railing, 'Run', run.properties)
  const pieces = [
    ...run.panels.map((panel) => ({ unit: panel.unit, piece: addPanel(model, panel) })),
    ...run.posts.map((post) => ({ unit: post.unit, piece: addPost(model, post) })),
  ]
  const within = (name: string) => pieces.filter(({ unit }) => unit === name).map(({ piece }) => piece)
  const units = run.units.map((unit) => {
    const assembly = addEndUnit(model, unit)
    aggregate(model, unit.id, assembly, within(unit.unit))
    return assembly
  })
  aggregate(model, 'run', railing, [...units, ...within('run')])
  return railing
}

function addEndUnit(model: IfcModel, { id, name, kind, properties }: IfcEndUnit): StepReference {
  const assembly = model.root('IfcElementAssembly', id, { name }, [
    ...[label(kind), model.ground, unset, unset],
    enumeration('SITE'),
    enumeration('USERDEFINED'),
  ])
  addProperties(model, id, assembly, 'End unit', properties)
  return assembly
}

function addPanel(model: IfcModel, panel: IfcPanel): StepReference {
  const { id, name, kind, properties, line } = panel
  const bodies = panelBodies(model.step, panel)
  const beam = model.root('IfcBeam', id, { name }, [
    label(kind),
    placedAt(model, line[0]!),
    shape(model.step, model.body, [['Body', 'SweptSolid', bodies]]),
    label(id),
    enumeration('BEAM'),
  ])
  addProperties(model, id, beam, 'Panel', properties)
  return beam
}

function addPost(model: IfcModel, post: IfcPost): StepReference {
  const { id, name, kind, properties, at } = post
  const member = model.root('IfcMember', id, { name }, [
    label(kind),
    placedAt(model, at),
    shape(model.step, model.body, [['Body', 'SweptSolid', [postBody(model.step, post)]]]),
    label(id),
    enumeration('POST'),
  ])
  addProperties(model, id, member, 'Post', properties)
  return member
}

function addFinding(model: IfcModel, { id, name, description, properties, at }: IfcFinding): StepReference {
  const point = point3(model.step, { easting: 0, northing: 0, elevation: 0 })
  const annotation = model.root('IfcAnnotation', id, { name, description }, [
    label('finding'),
    placedAt(model, at),
    shape(model.step, model.annotation, [['Annotation', 'Point', [point]]]),
    enumeration('USERDEFINED'),
  ])
  addProperties(model, id, annotation, 'Finding', properties)
  return annotation
}
