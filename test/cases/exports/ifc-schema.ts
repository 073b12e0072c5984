/**
 * The part of IFC 4.3 that a run uses, in a notation of our own.
 * @source ISO 16739-1:2024, schema IFC4X3_ADD2, clauses of the entities and types named here; read in the EXPRESS that
 *         buildingSMART publishes with its documentation
 *
 * An entity: its supertype after `<`, `-` before it where it is abstract or no run has one, then its own attributes as `name type`. `?`
 * marks what may be left out; `[n:m]` a list or set with that many members, `?` for no end; `*name` an attribute of a
 * supertype that is derived here and written as `*`.
 */
export const entities = `
-IfcRoot: GlobalId IfcGloballyUniqueId, OwnerHistory? IfcOwnerHistory, Name? IfcLabel, Description? IfcText
-IfcOwnerHistory:
-IfcObjectDefinition < IfcRoot:
-IfcContext < IfcObjectDefinition: ObjectType? IfcLabel, LongName? IfcLabel, Phase? IfcLabel, RepresentationContexts? [1:?] IfcRepresentationContext, UnitsInContext? IfcUnitAssignment
IfcProject < IfcContext:
-IfcObject < IfcObjectDefinition: ObjectType? IfcLabel
-IfcProduct < IfcObject: ObjectPlacement? IfcObjectPlacement, Representation? IfcProductRepresentation
-IfcSpatialElement < IfcProduct: LongName? IfcLabel
-IfcSpatialStructureElement < IfcSpatialElement: CompositionType? IfcElementCompositionEnum
IfcSite < IfcSpatialStructureElement: RefLatitude? IfcCompoundPlaneAngleMeasure, RefLongitude? IfcCompoundPlaneAngleMeasure, RefElevation? IfcLengthMeasure, LandTitleNumber? IfcLabel, SiteAddress? IfcPostalAddress
-IfcPostalAddress:
-IfcFacility < IfcSpatialStructureElement:
IfcRoad < IfcFacility: PredefinedType? IfcRoadTypeEnum
-IfcElement < IfcProduct: Tag? IfcIdentifier
-IfcBuiltElement < IfcElement:
IfcRailing < IfcBuiltElement: PredefinedType? IfcRailingTypeEnum
IfcBeam < IfcBuiltElement: PredefinedType? IfcBeamTypeEnum
IfcMember < IfcBuiltElement: PredefinedType? IfcMemberTypeEnum
IfcElementAssembly < IfcElement: AssemblyPlace? IfcAssemblyPlaceEnum, PredefinedType? IfcElementAssemblyTypeEnum
IfcAnnotation < IfcProduct: PredefinedType? IfcAnnotationTypeEnum
-IfcPositioningElement < IfcProduct:
-IfcLinearPositioningElement < IfcPositioningElement:
IfcAlignment < IfcLinearPositioningElement: PredefinedType? IfcAlignmentTypeEnum
IfcReferent < IfcPositioningElement: PredefinedType? IfcReferentTypeEnum
-IfcLinearElement < IfcProduct:
IfcAlignmentHorizontal < IfcLinearElement:
IfcAlignmentVertical < IfcLinearElement:
IfcAlignmentSegment < IfcLinearElement: DesignParameters IfcAlignmentParameterSegment
-IfcAlignmentParameterSegment: StartTag? IfcLabel, EndTag? IfcLabel
IfcAlignmentHorizontalSegment < IfcAlignmentParameterSegment: StartPoint IfcCartesianPoint, StartDirection IfcPlaneAngleMeasure, StartRadiusOfCurvature IfcLengthMeasure, EndRadiusOfCurvature IfcLengthMeasure, SegmentLength IfcNonNegativeLengthMeasure, GravityCenterLineHeight? IfcPositiveLengthMeasure, PredefinedType IfcAlignmentHorizontalSegmentTypeEnum
IfcAlignmentVerticalSegment < IfcAlignmentParameterSegment: StartDistAlong IfcLengthMeasure, HorizontalLength IfcNonNegativeLengthMeasure, StartHeight IfcLengthMeasure, StartGradient IfcRatioMeasure, EndGradient IfcRatioMeasure, RadiusOfCurvature? IfcLengthMeasure, PredefinedType IfcAlignmentVerticalSegmentTypeEnum
-IfcPropertyDefinition < IfcRoot:
-IfcPropertySetDefinition < IfcPropertyDefinition:
IfcPropertySet < IfcPropertySetDefinition: HasProperties [1:?] IfcProperty
-IfcProperty: Name IfcIdentifier, Specification? IfcText
-IfcSimpleProperty < IfcProperty:
IfcPropertySingleValue < IfcSimpleProperty: NominalValue? IfcValue, Unit? IfcUnit
-IfcRelationship < IfcRoot:
-IfcRelDecomposes < IfcRelationship:
IfcRelAggregates < IfcRelDecomposes: RelatingObject IfcObjectDefinition, RelatedObjects [1:?] IfcObjectDefinition
IfcRelNests < IfcRelDecomposes: RelatingObject IfcObjectDefinition, RelatedObjects [1:?] IfcObjectDefinition
-IfcRelConnects < IfcRelationship:
IfcRelContainedInSpatialStructure < IfcRelConnects: RelatedElements [1:?] IfcProduct, RelatingStructure IfcSpatialElement
IfcRelReferencedInSpatialStructure < IfcRelConnects: RelatedElements [1:?] IfcSpatialReferenceSelect, RelatingStructure IfcSpatialElement
IfcRelPositions < IfcRelConnects: RelatingPositioningElement IfcPositioningElement, RelatedProducts [1:?] IfcProduct
-IfcRelDefines < IfcRelationship:
IfcRelDefinesByProperties < IfcRelDefines: RelatedObjects [1:?] IfcObjectDefinition, RelatingPropertyDefinition IfcPropertySetDefinitionSelect
-IfcGroup < IfcObject:
-IfcRepresentationContext: ContextIdentifier? IfcLabel, ContextType? IfcLabel
IfcGeometricRepresentationContext < IfcRepresentationContext: CoordinateSpaceDimension IfcDimensionCount, Precision? IfcReal, WorldCoordinateSystem IfcAxis2Placement, TrueNorth? IfcDirection
IfcGeometricRepresentationSubContext < IfcGeometricRepresentationContext: *CoordinateSpaceDimension, *Precision, *WorldCoordinateSystem, *TrueNorth, ParentContext IfcGeometricRepresentationContext, TargetScale? IfcPositiveRatioMeasure, TargetView IfcGeometricProjectionEnum, UserDefinedTargetView? IfcLabel
-IfcRepresentation: ContextOfItems IfcRepresentationContext, RepresentationIdentifier? IfcLabel, RepresentationType? IfcLabel, Items [1:?] IfcRepresentationItem
-IfcShapeModel < IfcRepresentation:
IfcShapeRepresentation < IfcShapeModel:
-IfcProductRepresentation: Name? IfcLabel, Description? IfcText, Representations [1:?] IfcRepresentation
IfcProductDefinitionShape < IfcProductRepresentation:
-IfcObjectPlacement: PlacementRelTo? IfcObjectPlacement
IfcLocalPlacement < IfcObjectPlacement: RelativePlacement IfcAxis2Placement
IfcLinearPlacement < IfcObjectPlacement: RelativePlacement IfcAxis2PlacementLinear, CartesianPosition? IfcAxis2Placement3D
-IfcRepresentationItem:
-IfcGeometricRepresentationItem < IfcRepresentationItem:
-IfcPoint < IfcGeometricRepresentationItem:
IfcCartesianPoint < IfcPoint: Coordinates [2:3] IfcLengthMeasure
IfcPointByDistanceExpression < IfcPoint: DistanceAlong IfcCurveMeasureSelect, OffsetLateral? IfcLengthMeasure, OffsetVertical? IfcLengthMeasure, OffsetLongitudinal? IfcLengthMeasure, BasisCurve IfcCurve
IfcDirection < IfcGeometricRepresentationItem: DirectionRatios [2:3] IfcReal
IfcVector < IfcGeometricRepresentationItem: Orientation IfcDirection, Magnitude IfcLengthMeasure
-IfcPlacement < IfcGeometricRepresentationItem: Location IfcPoint
IfcAxis2Placement2D < IfcPlacement: RefDirection? IfcDirection
IfcAxis2Placement3D < IfcPlacement: Axis? IfcDirection, RefDirection? IfcDirection
IfcAxis2PlacementLinear < IfcPlacement: Axis? IfcDirection, RefDirection? IfcDirection
-IfcCurve < IfcGeometricRepresentationItem:
IfcLine < IfcCurve: Pnt IfcCartesianPoint, Dir IfcVector
-IfcConic < IfcCurve: Position IfcAxis2Placement
IfcCircle < IfcConic: Radius IfcPositiveLengthMeasure
-IfcSpiral < IfcCurve: Position IfcAxis2Placement
IfcClothoid < IfcSpiral: ClothoidConstant IfcLengthMeasure
IfcPolynomialCurve < IfcCurve: Position IfcPlacement, CoefficientsX? [2:?] IfcReal, CoefficientsY? [2:?] IfcReal, CoefficientsZ? [2:?] IfcReal
-IfcBoundedCurve < IfcCurve:
IfcPolyline < IfcBoundedCurve: Points [2:?] IfcCartesianPoint
IfcCompositeCurve < IfcBoundedCurve: Segments [1:?] IfcSegment, SelfIntersect IfcLogical
IfcGradientCurve < IfcCompositeCurve: BaseCurve IfcBoundedCurve, EndPoint? IfcPlacement
-IfcSegment < IfcGeometricRepresentationItem: Transition IfcTransitionCode
IfcCurveSegment < IfcSegment: Placement IfcPlacement, SegmentStart IfcCurveMeasureSelect, SegmentLength IfcCurveMeasureSelect, ParentCurve IfcCurve
-IfcSolidModel < IfcGeometricRepresentationItem:
-IfcSweptAreaSolid < IfcSolidModel: SweptArea IfcProfileDef, Position? IfcAxis2Placement3D
IfcExtrudedAreaSolid < IfcSweptAreaSolid: ExtrudedDirection IfcDirection, Depth IfcPositiveLengthMeasure
-IfcProfileDef: ProfileType IfcProfileTypeEnum, ProfileName? IfcLabel
IfcArbitraryClosedProfileDef < IfcProfileDef: OuterCurve IfcCurve
-IfcParameterizedProfileDef < IfcProfileDef: Position? IfcAxis2Placement2D
IfcRectangleProfileDef < IfcParameterizedProfileDef: XDim IfcPositiveLengthMeasure, YDim IfcPositiveLengthMeasure
IfcUnitAssignment: Units [1:?] IfcUnit
-IfcNamedUnit: Dimensions IfcDimensionalExponents, UnitType IfcUnitEnum
IfcSIUnit < IfcNamedUnit: *Dimensions, Prefix? IfcSIPrefix, Name IfcSIUnitName
IfcConversionBasedUnit < IfcNamedUnit: Name IfcLabel, ConversionFactor IfcMeasureWithUnit
IfcMeasureWithUnit: ValueComponent IfcValue, UnitComponent IfcUnit
IfcDimensionalExponents: LengthExponent INTEGER, MassExponent INTEGER, TimeExponent INTEGER, ElectricCurrentExponent INTEGER, ThermodynamicTemperatureExponent INTEGER, AmountOfSubstanceExponent INTEGER, LuminousIntensityExponent INTEGER
-IfcCoordinateReferenceSystem: Name? IfcLabel, Description? IfcText, GeodeticDatum? IfcIdentifier
IfcProjectedCRS < IfcCoordinateReferenceSystem: VerticalDatum? IfcIdentifier, MapProjection? IfcIdentifier, MapZone? IfcIdentifier, MapUnit? IfcNamedUnit
-IfcCoordinateOperation: SourceCRS IfcCoordinateReferenceSystemSelect, TargetCRS IfcCoordinateReferenceSystem
IfcMapConversion < IfcCoordinateOperation: Eastings IfcLengthMeasure, Northings IfcLengthMeasure, OrthogonalHeight IfcLengthMeasure, XAxisAbscissa? IfcReal, XAxisOrdinate? IfcReal, Scale? IfcReal
`

/** Defined types by what they are made of; `>0` and `>=0` are their rules. */
export const definedTypes: Readonly<Record<string, string>> = {
  IfcGloballyUniqueId: 'STRING',
  IfcLabel: 'STRING(255)',
  IfcIdentifier: 'STRING(255)',
  IfcText: 'STRING',
  IfcReal: 'REAL',
  IfcInteger: 'INTEGER',
  IfcBoolean: 'BOOLEAN',
  IfcLogical: 'LOGICAL',
  IfcDimensionCount: 'INTEGER',
  IfcLengthMeasure: 'REAL',
  IfcNonNegativeLengthMeasure: 'REAL>=0',
  IfcPositiveLengthMeasure: 'REAL>0',
  IfcPlaneAngleMeasure: 'REAL',
  IfcRatioMeasure: 'REAL',
  IfcPositiveRatioMeasure: 'REAL>0',
  IfcParameterValue: 'REAL',
  IfcCompoundPlaneAngleMeasure: 'LIST',
}

export const selects: Readonly<Record<string, readonly string[]>> = {
  IfcAxis2Placement: ['IfcAxis2Placement2D', 'IfcAxis2Placement3D'],
  IfcCoordinateReferenceSystemSelect: ['IfcCoordinateReferenceSystem', 'IfcGeometricRepresentationContext'],
  IfcCurveMeasureSelect: ['IfcLengthMeasure', 'IfcParameterValue'],
  IfcPropertySetDefinitionSelect: ['IfcPropertySetDefinition'],
  IfcSpatialReferenceSelect: ['IfcGroup', 'IfcProduct'],
  IfcUnit: ['IfcNamedUnit'],
  // of the many members the ones that property values here have
  IfcValue: ['IfcLengthMeasure', 'IfcBoolean', 'IfcInteger', 'IfcText'],
}

export const enumerations: Readonly<Record<string, string>> = {
  IfcAlignmentHorizontalSegmentTypeEnum:
    'BLOSSCURVE CIRCULARARC CLOTHOID COSINECURVE CUBIC HELMERTCURVE LINE SINECURVE VIENNESEBEND',
  IfcAlignmentTypeEnum: 'USERDEFINED NOTDEFINED',
  IfcAlignmentVerticalSegmentTypeEnum: 'CIRCULARARC CLOTHOID CONSTANTGRADIENT PARABOLICARC',
  IfcAnnotationTypeEnum:
    'CONTOURLINE DIMENSION ISOBAR ISOLUX ISOTHERM LEADER SURVEY SYMBOL TEXT USERDEFINED NOTDEFINED',
  IfcAssemblyPlaceEnum: 'FACTORY SITE NOTDEFINED',
  IfcBeamTypeEnum:
    'BEAM CORNICE DIAPHRAGM EDGEBEAM GIRDER_SEGMENT HATSTONE HOLLOWCORE JOIST LINTEL PIERCAP SPANDREL T_BEAM USERDEFINED NOTDEFINED',
  IfcElementAssemblyTypeEnum:
    'ABUTMENT ACCESSORY_ASSEMBLY ARCH BEAM_GRID BRACED_FRAME CROSS_BRACING DECK DILATATIONPANEL ENTRANCEWORKS GIRDER GRID MAST PIER PYLON RAIL_MECHANICAL_EQUIPMENT_ASSEMBLY REINFORCEMENT_UNIT RIGID_FRAME SHELTER SIGNALASSEMBLY SLAB_FIELD SUMPBUSTER SUPPORTINGASSEMBLY SUSPENSIONASSEMBLY TRACKPANEL TRACTION_SWITCHING_ASSEMBLY TRAFFIC_CALMING_DEVICE TRUSS TURNOUTPANEL USERDEFINED NOTDEFINED',
  IfcElementCompositionEnum: 'COMPLEX ELEMENT PARTIAL',
  IfcGeometricProjectionEnum:
    'ELEVATION_VIEW GRAPH_VIEW MODEL_VIEW PLAN_VIEW REFLECTED_PLAN_VIEW SECTION_VIEW SKETCH_VIEW USERDEFINED NOTDEFINED',
  IfcMemberTypeEnum:
    'ARCH_SEGMENT BRACE CHORD COLLAR MEMBER MULLION PLATE POST PURLIN RAFTER STAY_CABLE STIFFENING_RIB STRINGER STRUCTURALCABLE STRUT STUD SUSPENDER SUSPENSION_CABLE TIEBAR USERDEFINED NOTDEFINED',
  IfcProfileTypeEnum: 'AREA CURVE',
  IfcRailingTypeEnum: 'BALUSTRADE FENCE GUARDRAIL HANDRAIL USERDEFINED NOTDEFINED',
  IfcReferentTypeEnum:
    'BOUNDARY INTERSECTION KILOPOINT LANDMARK MILEPOINT POSITION REFERENCEMARKER STATION SUPERELEVATIONEVENT WIDTHEVENT USERDEFINED NOTDEFINED',
  IfcRoadTypeEnum: 'USERDEFINED NOTDEFINED',
  IfcSIPrefix: 'ATTO CENTI DECA DECI EXA FEMTO GIGA HECTO KILO MEGA MICRO MILLI NANO PETA PICO TERA',
  IfcSIUnitName:
    'AMPERE BECQUEREL CANDELA COULOMB CUBIC_METRE DEGREE_CELSIUS FARAD GRAM GRAY HENRY HERTZ JOULE KELVIN LUMEN LUX METRE MOLE NEWTON OHM PASCAL RADIAN SECOND SIEMENS SIEVERT SQUARE_METRE STERADIAN TESLA VOLT WATT WEBER',
  IfcTransitionCode: 'CONTINUOUS CONTSAMEGRADIENT CONTSAMEGRADIENTSAMECURVATURE DISCONTINUOUS',
  IfcUnitEnum:
    'ABSORBEDDOSEUNIT AMOUNTOFSUBSTANCEUNIT AREAUNIT DOSEEQUIVALENTUNIT ELECTRICCAPACITANCEUNIT ELECTRICCHARGEUNIT ELECTRICCONDUCTANCEUNIT ELECTRICCURRENTUNIT ELECTRICRESISTANCEUNIT ELECTRICVOLTAGEUNIT ENERGYUNIT FORCEUNIT FREQUENCYUNIT ILLUMINANCEUNIT INDUCTANCEUNIT LENGTHUNIT LUMINOUSFLUXUNIT LUMINOUSINTENSITYUNIT MAGNETICFLUXDENSITYUNIT MAGNETICFLUXUNIT MASSUNIT PLANEANGLEUNIT POWERUNIT PRESSUREUNIT RADIOACTIVITYUNIT SOLIDANGLEUNIT THERMODYNAMICTEMPERATUREUNIT TIMEUNIT VOLUMEUNIT USERDEFINED',
}
