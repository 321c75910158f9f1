$version: "2.0"

namespace dev.gambrel.benchmarks

@range(min: 0, max: 100)
bigDecimal Percent

@pattern("^[0-9]+(\\.[0-9]+)? (kg|g|lb|oz)$")
string Weight

@pattern("^[0-9]+(\\.[0-9]+)? (mm|cm|in)$")
string Length

@length(min: 1, max: 128)
string Name

@length(min: 1, max: 4096)
string Words

@range(min: 1, max: 99)
integer Count

enum StreamName {
    DICED = "diced"
    MINCE = "mince"
    STOCK_BONES = "stock bones"
    RENDER = "render"
    BIN = "bin"
}

enum StreamKind {
    SALEABLE = "saleable"
    BY_PRODUCT = "by-product"
    WASTE = "waste"
}

enum BoneName {
    FEMUR = "femur"
    LUMBAR_VERTEBRAE = "lumbar vertebrae"
    HUMERUS = "humerus"
    BREAST_BONE = "breast bone"
    NECK_BONES = "neck bones"
}

enum GlandName {
    POPLITEAL = "popliteal"
    LUMBAR = "lumbar"
    PRESCAPULAR = "prescapular"
    STERNAL = "sternal"
    RETROPHARYNGEAL = "retropharyngeal"
}

enum SourceName {
    HOUSE_TESTS = "house tests"
}

enum SourceKind {
    PUBLISHED = "published"
    MEASURED = "measured"
    JUDGEMENT = "judgement"
    MEMORY = "memory"
    COMMON_PRACTICE = "common practice"
}

enum Basis {
    LIVE = "live"
    IN_SKIN = "in-skin"
    WARM = "warm"
    COLD = "cold"
}

enum PieceCount {
    ONE = "one"
    TWO = "two"
}

enum BoneState {
    BONE_IN = "bone in"
    PART_BONED = "part boned"
    BONELESS = "boneless"
}

enum Tool {
    KNIFE = "knife"
    SAW = "saw"
    HAND = "hand"
    CLEAVER = "cleaver"
}

enum Where {
    ANY_POINT = "at any point"
    AVERAGE = "on average"
}

list Sources {
    member: SourceName
}

list Bones {
    member: BoneName
}

list Glands {
    member: GlandName
}

list Tools {
    member: Tool
}

list Names {
    member: Name
}

@pattern("^rib [1-9][0-9]?$")
string Point

@length(min: 2, max: 2)
list Points {
    member: Point
}

structure Separation {
    tools: Tools
    along: Name
    between: Points
}

structure Portion {
    @required
    name: Name
    @required
    weight: Weight
    deviation: Weight
    @required
    remainder: StreamName
}

/// What a cut is, apart from its share, which is said where it is a member.
@trait(selector: "structure")
structure cut {
    pieces: PieceCount
    bone: BoneState
    contains: Bones
    separate: Separation
    to: StreamName
    portion: Portion
}

@trait(selector: "structure > member")
structure share {
    @required
    mean: Percent
    deviation: Percent
    sources: Sources
}

@trait(selector: "structure > member")
structure fat {
    @required
    atMost: Length
    @required
    where: Where
}

@trait(selector: "structure > member")
enum gland {
    POPLITEAL = "popliteal"
    LUMBAR = "lumbar"
    PRESCAPULAR = "prescapular"
    STERNAL = "sternal"
    RETROPHARYNGEAL = "retropharyngeal"
}

@trait(selector: "structure > member")
enum to {
    DICED = "diced"
    MINCE = "mince"
    STOCK_BONES = "stock bones"
    RENDER = "render"
    BIN = "bin"
}

structure Published {
    @required
    from: Percent
    @required
    to: Percent
    @required
    of: Name
    sources: Sources
}

structure Counted {
    @required
    from: Count
    @required
    to: Count
    sources: Sources
}

@trait(selector: "structure")
structure piece {
    pieces: PieceCount
    published: Published
    glands: Glands
    bones: Bones
}

@trait(selector: "structure")
structure species {
    also: Names
    ribs: Counted
    lumbar: Counted
}

@trait(selector: "structure")
structure source {
    @required
    kind: SourceKind
    @required
    citation: Words
}

@trait(selector: "structure")
structure stream {
    @required
    kind: StreamKind
    lean: Percent
}

@trait(selector: "structure")
structure specification {
    @required
    title: Words
    @required
    @range(min: 1, max: 999999)
    revision: Integer
    @required
    @idRef(failWhenMissing: true, selector: "structure")
    species: String
}

@trait(selector: "structure")
structure carcass {
    @required
    basis: Basis
    presentation: Names
    from: Weight
    to: Weight
}

@trait(selector: "structure")
structure step {
    @required
    from: Basis
    @required
    to: Basis
    @required
    loss: Name
    @required
    mean: Percent
    deviation: Percent
}

structure Bone {}

structure Trim {}

structure Loss {}

structure Rest {}

@source(kind: "measured", citation: "invented figures of a benchmark")
structure HouseTests {}

@stream(kind: "saleable", lean: 95)
structure Diced {}

@stream(kind: "saleable", lean: 85)
structure Mince {}

@stream(kind: "by-product")
structure StockBones {}

@stream(kind: "by-product")
structure Render {}

@stream(kind: "waste")
structure Bin {}

@species(
    also: ["ovine"]
    ribs: { from: 13, to: 13, sources: ["house tests"] }
    lumbar: { from: 6, to: 7, sources: ["house tests"] }
)
structure Sheep {
    leg: Leg
    loin: Loin
    shoulder: Shoulder
    breast: Breast
    neck: Neck
}

// also the haunch
@piece(
    pieces: "two"
    published: { from: 10, to: 30, of: "carcass", sources: ["house tests"] }
    glands: ["popliteal"]
    bones: ["femur"]
)
structure Leg {}

@piece(pieces: "two", glands: ["lumbar"], bones: ["lumbar vertebrae"])
structure Loin {}

@piece(pieces: "two", glands: ["prescapular"], bones: ["humerus"])
structure Shoulder {}

@piece(pieces: "two", glands: ["sternal"], bones: ["breast bone"])
structure Breast {}

@piece(pieces: "two", glands: ["retropharyngeal"], bones: ["neck bones"])
structure Neck {}

@specification(title: "House hogget", revision: 1, species: Sheep)
@carcass(basis: "cold", presentation: ["skin off"], from: "20 kg", to: "24 kg")
@step(from: "warm", to: "cold", loss: "chill shrink", mean: 2.4, deviation: 0.5)
