/** Words for telling a recogniser's slip of one letter from a word of its own. */

const words = (list: string): readonly string[] => list.trim().split(/\s+/)

/** Small words of doses that are worth mending, besides numbers and units. */
export const DOSE_JOINTS = words('rest hold each side sides between then swap')

/** Real words one letter away from an amount or a word of a name ("fine", "match", "stops"): never mended. */
export const REAL_WORDS = words(`
    list lost lust neat nest newt nicks scap miss misses tins sats trans parse percept stated mass moss muss wist
    abound asound atone bails balls banned bans bends bills binds bins bites black blame blames blast blaze blink
    bload boat boats bolts bonds bools boring bottle bottles brake brave breach bread brice brick bride brides brink
    bulls bunch buns calls cards carls carts cases caves chains cheat chill choos chose claps clasping class claus
    claws clears click clicks clipping cloak clone clones cluck clumps clutch coach cramp cramps crank cranks
    crasher crate crates crouch crown currs curry deals dears death deaths decree deems dents dists doing doses
    dozing draws drove drugs eases expended fading failing fails faking faxes feeds feels fide file filling fillout
    finder finders fine fire flags flatters flaws fleck flock flour flows flute flutes folks fonts fools forky forms
    frags frets frost gallons gles gots grain grains groan grown grunts guide guides halls hamming handing hanning
    harms hatch held helding hells hides hires holes homer hood hoops house houses hulls humping infer infers
    inserted inter invented inver lacks lands lanes leads leaks leaps lefts lends levels links lists literal
    literals liver loaders loads lobes logged loops lungs mans marsh match matches matching matchings meeting
    meetings minds mines minus mips moaning modifiers nice nodes none notes overread packs paint paints pales palls
    passed passes paster peels phone phones piles pinch pinches pipes plans plats player players plink plots plunk
    poker poles polls ports posts practise prance pranks preds price print printer printers prints prize prizes
    probe probes probs prose prove proves prune prunes pulling puncts purged purse quartets quirk quirks racking
    ranked ranks raps rating ravings reads reals reams rect reds refraction related relayed rems reseat rides risks
    rist roaming rocked rungs rust sales saven saving savings saying scrap sealed seeds sells sends sents setting
    settings setts shams sheep sheeps shine shipping shoes shoot shoots shopt shout shuts signing signs sine sings
    site sites sits size sized sizes skill skills slabs slap slated sleep sleeps slice slicer slicers slices slicing
    slick slider sling slings slipping slips slouch smap smart smarts snap snatch sniff soap soles songs spell
    spells spend spends spice spider spikes spinning spiral spite spits splat splats spones sport sports springs
    squads stabs stack stacks staff stall stalls stater steam steams steeps stems stick sticks stopping stops stores
    stretched striker strip strips strobe stuck stuff suits swallow swallows sweep swift swung tacks tarts tasks
    terse terser tests than thin threats threed threw thumps thunk ticks tile tire tome tommy tons torch torn tough
    towers traces trail trailer trailers trails trainees trick tricks trims tuned turf turns twips types waist
    waivers walls walters wands wargs warns warts wells white wider wills winds wings wipes would writers wrote
`)
