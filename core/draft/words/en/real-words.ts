/** Words for telling a recogniser's slip of one letter from a word of its own. */

const words = (list: string): readonly string[] => list.trim().split(/\s+/)

/** Small words of doses that are worth mending, besides numbers and units. */
export const DOSE_JOINTS = words('rest hold each side sides between then swap')

/**
 * Real words one letter away from an amount or a word of a name ("fine", "match", "stops"): never mended. Those of everyday
 * English were found with the small word lists of SCOWL (wordlist.aspell.net).
 */
export const REAL_WORDS = words(`
    abound abounds addiction addictions aline alines angers angling asound atone atones babes bails bakes balded
    bales balls balms banged bangs banked banned bans barks basks bauds bawls beach beard beards beech beers belay
    belch bends berth berths bides bills binds bins birch bites black blacks blame blames blare blares blast
    blasts blaze blazes bleaker blink bload boast boasts boat boats bodes boding bolts bonded bonds boning booing
    bools booms boons boors booster boosters boring bottle bottles bouts bowing brake brakes braking brave braves
    braving braying breach breaches breaching bread breads brice brick bricks bride brides bridle bridles bridling
    bringing brink brinks brood broods brusk bucks bulls bully bunch buns busts cakes calks calls calms cameos
    capes cards carls carts cases caves chains chairing chapping chaps cheat cheats chiles chilis chill chills
    china chipper chippers choir choirs choos chose clack clacks clamber clambers clamping clans claps clasping
    class claus claws clears cleats click clicks climes clipping clippings cloak cloaks clone clones clonk clove
    cloves cluck clucks clumps clutch coach coals coils coins contraption contraptions controllers cooks cords
    corks corns corps countess crags cramp cramps crank cranks crasher crate crates crave craves craze crazes
    crest crests crews cries crock crocks crouch crown crutch culls curbs curds currs curry dames dawns deals
    deans dears death deaths debts decree decrees deems deers delis delta dents desks dices dikes dills dines
    discs disks dists doing doling dominos dopes doping doses dosing dotes doting dozes dozing drabs draws dregs
    drips drivel drivels droll dross drove droves drugs ducts dulls dunks eases eights etch expended fades fading
    failing failings fails fakes faking faring fates fating faxes fazes fazing feces feeds feels felling felts
    fide fifteens file filling fillings fillout finder finders fine fire firearm firearms firms flags flatter
    flatters flaws fleas fleck flecks flock flocks floods flour flours flows flues fluster flusters flute flutes
    fluxed foals folks fonts fools footy foray forays fords fores forky forms fortes forts fouls fours frags frets
    fronds frost frosts frying fuels fulling furls gallons gallows gastric gees glade glades gles goads gobs
    godless gods golds goofs goons gots grain grains grant grants grids grins grits groan groans grown grunts
    guide guides gutting hallow halls hallway hallways hamming hamper hampers hamstrung handing hanged hanning
    hares harms harps harts hatch hawks heaps hears heats held helding hells hemming herbs hicks hides hilts hinds
    hinging hippy hires hives hoed holes homer honks hood hooding hoofs hoops hoots horde hordes hording house
    houses hovels hulls humping hutch impart imparts infer infers inserted inter inters invented inver invested
    jackknives jigging jugging kills kilns kilts kinks kneel knives lacks lagged lakes lander lands lanes leaded
    leading leads leafing leafs leaking leaks leaning leaps leasing leaving lefts lends leper lepers lest levees
    levels licks lilts links list lists literal literals liver livers loaders loads loafed loaned loans lobes
    lofts logged loops lorded loser losers lost lucks lugged lungs lust malting mans marsh marshes mass match
    matches matching matchings meeting meetings metros minds mines minks mints minus minuses mips miss misses
    moaning mobilization mobilizations modifiers moister molting mooning moss muss muter neat nest nett newt nice
    nicety nicks nines nite nodes none notes omens ouster ousters overhangs overhears overheats overland overread
    packs pacts paddies paint painter painters paints palates pales palls pants pares parks parse parses passed
    passes paster pasts payoff payoffs peace peaces pecks peddle peddles peddling peels penal percept petal petals
    phone phones piddle piddles piddling piles pills pinch pinches pines pinks pipes pirates pistons plans planter
    planters plants plats player players plink plods plonk plots plunk pluses poker pokers poles polls poops poppy
    pores ports posts practise practises prance prank pranks prays preds preys price prices pride prides pries
    primps print printer printers prints prise prises prize prizes probe probes probs prods proms prongs prose
    prove proves prune prunes pucks puddle puddles puddling pukes pulling pulping pulsed pumas puncts pureed
    purged purred purse purses pursing pusses quack quacks quartets quays quirk quirks rackets racking raging
    raided railed rained raisers raking ranked ranks raping raps raring rating ratings raving ravings razing
    reacts reads reals reams reaps rect reds refraction reis related relayed rems rent rents repeals repent
    repents repetitious reseat retch reverie reveries revs ricing rides riles rinds rinks rips risks rist roach
    roaming roars robes robing rocked rooking rooks roping ruining rungs ruses rust rusts sacs sades sales sats
    saven saving savings saying sayings scap scrap scraps scrawl scrawls scuffle scuffles scuttle scuttles sealed
    seamed seared sects seeds seeps sells semen sends sents setting settings setts sevens severs sewing shaft
    shafting shafts shams sheds sheep sheeps shies shimmers shine shines shinning shipping shirting shoes shoos
    shoot shoots shops shopt shores shout shouts shrubs shuns shuts sics sifting signing signs silting sine sings
    sire sired sires site sited sites sits sixes size sized sizes skated skill skills skimming skimping skulks
    slabs slacked slap slated sleeker sleep sleeps slice slicer slicers slices slicing slick slicks slider slime
    slimming slims sling slings slipping slips sliver slivers slobs slogs slops slouch sludge slums smacked smap
    smart smarts smites smoulder smoulders snacked snags snap snatch snide sniff sniffs snipping snobs snort
    snorts soap soars soles solos songs sores sowing spars spays spell spells spend spends spice spices spider
    spied spike spikes spinning spiral spirals spire spires spite spites spits splat splats splint splints spones
    sport sports springs squads squire squires stabs stack stacks staff staffs stags staid staider stains stalked
    stall stalls stares stark stated stater stationery steam steams steamy steeping steeps stems stews stick
    sticks sting stings stink stinks stirs stitch stocked stopper stoppers stopping stops stores storms stretched
    strew strews striker strikers strip strips stript strobe strove stuck stuff stuffs suing suits supporters
    swaggered swallow swallows sweep sweeper sweepers swell swells swift swifts swine swung tacks tame tames tans
    tarts tasks teas tease teases teen tees tempts tenser terse terser tests than thin threats threed threes threw
    throbs thumps thunk ticks tide tile tills tins tints tire tome tomes tommy tons torch torn tough toughs towers
    traces tracts trail trailer trailers trails trainees trans transverses trays treks trick tricks trims trios
    trues tuned turf turfing turfs turns tusks twelves twine twips types udder udders uptight wages wails waist
    waists waivers wakes walling walls walters wands wanes wards wargs warns warps warts waxes wells whist white
    whites wider wilds wills winds wings winks wipes wires wiser wises wist wizes woofs would woulds wrest wrests
    wright writers wrote
`)
