/**
 * How each calculation works its answer out, in a few sentences, by its name: what its page says over the form. They stand apart from the
 * declarations, which go to every phone, since only a page that is being built asks for them.
 */
export const methods: Readonly<Record<string, string>> = {
  'fresh-air':
    'ASHRAE 62.2 sets the whole-house rate by floor area and by people. People are counted as the bedrooms, at least one, plus one. A bath or kitchen whose fan does less than its own rate lacks the rest; a window that opens forgives some of it, and a share of what is still lacked is added to the whole-house rate. Nothing is credited for leaks. The factory rule, by its text of 2015, tells how such homes are built; an older home was built to an older text, and it asks nothing of a home in use.',
  'exhaust-duct':
    'The table of IRC M1506.2, which newer editions number M1504.2, gives the longest straight duct for the fan’s rated flow, the duct’s size and its kind; each elbow takes its share off. “No limit” and “not allowed” are the table’s own words. A flow between two rows takes the larger, a size between two rows the smaller. Where the table has no row, no length is given.',
  'cavity-ventilation':
    '24 CFR 3280.504(d) asks for none in a single section with a metal roof that has neither sheathing nor underlayment, if the ways for air from the living space into the cavity are sealed: at electrical outlets, junctions and cables, and at pipes, flues and exhaust vents. Every other cavity has vents, or a fan; closed-cell membrane roofs between parallel planes are left out. It is the rule for new homes by its text of 2015, and a reference for one in use, which may have been built to an older text: local code governs.',
  'clear-spaces':
    'Each thing that gets hot has its least distance by its kind; its own listing governs. The space is a column through the depth of the new fill, as wide as the thing and the distance on both sides; that much comes off the volume to fill. Cellulose keeps off every recessed light, whatever its rating.',
  readiness:
    'Each condition is looked at and answered in plain words; an empty answer counts as not looked at. Paint and asbestos follow from the year. One open stop makes the home not ready; until it is settled, the plan’s figures stay behind it.',
  'cavity-section':
    'The cross-section follows from the shape of the roof: straight lines, a circular arc, or the depths you measured. The area is a closed form. Old insulation, the chords of the trusses and the spaces kept open are taken off; truss webs are not.',
  'ceiling-load':
    'Depth times density is the weight on the board; the old insulation’s is added. It is held against the published limit for that board on that framing. A board without a published limit is unrated: nothing is guessed for it, and an engineer’s written load settles it.',
  dust: 'Each measured concentration over its limit: the law’s for any dust, and for glass fibre the limits that a research institute recommends, which are not law. The law for construction has no limit for the fine part, so that of general industry stands in for it. The worst of them is what a respirator must make good; the kind that protects least and still suffices is named, and a full facepiece only with its fit measured. A concentration is an average over the work shift, sampled in the air that is breathed.',
  'fall-protection':
    'The height of the edge decides whether protection is due; the slope and the work decide which kinds serve. Warning lines and monitors serve for roofing work on a low slope only, and a monitor alone only where the roof is narrow enough. Work that is not surely roofing work gets what serves at any edge. States may ask for more.',
  'heat-index-band':
    'The heat index holds for shade and a light wind. Full sun may add to it; all of that is added, and the guide’s bands are then read. On the border of two bands the graver one is taken. It is a guide, not a law; local heat rules may ask for more.',
  ladder:
    'The foot stands out by the share of the working length that the ladder rule gives, measured level; the working length runs along the ladder from its foot to its top support. Height, foot and working length make a right triangle. The rails go on above the edge by what the rule on landings asks, measured upright.',
  'line-clearance':
    'Up to a voltage one distance serves; above it a little more for each further step, a part of a step adding its part. The result is rounded up to whole inches. For a line of unknown voltage no distance is given. The distance is for people not qualified to work near live lines; the power company may ask for more.',
  'noise-dose':
    'Each time is divided by the time that the table allows at its level, and the results are added up. Between two rows of the table the louder one is taken, on the safe side. Quieter noise than the first row has no part in it; above the last row no time is allowed.',
  fill: 'Volume times density gives the weight; divided by the net weight of a bag it gives the bags. The truck takes the usual spread on top, in whole bags. R per inch is the maker’s, if you give it; for glass fibre it is else our estimate between the published densities, with its uncertainty.',
  'roof-heat':
    'At each place across, R is films, ceiling, old insulation and new fill, as deep as they lie there; the metal roof gets none. U is the mean of 1/R across the cavity: the closed form of ISO 6946:2017 annex E (its text was not read) over each straight piece, a quadrature over a bow. The framing lies in parallel: through a truss the chords are wood and insulation stands between them, webs left out; U is the mean of both ways, each by its share of the ceiling. Old insulation under the fill lies loose, or pressed, and then keeps what the federal table leaves to a batt between parallel planes. Where the roof is lower than the old insulation, only what fits is counted. Before, the air above the old insulation gets no R, since a leaky space has none. Winter, heat flowing up; leaking air is not counted.',
  'hole-layout':
    'Every place on the tape, to the eighth of an inch, is weighed: between trusses, off the seams, clear of what comes through the roof, with the first and last hole and the gaps within their ranges. Of all layouts that hold every rule it takes the fewest holes; then the fewest patches over a seam; then the most even gaps; then the least moved from the even places. Where none holds every rule it says which rules clash and offers the least departure.',
  layers:
    'In series the R of the layers add up, films included; U is 1 over R. Two paths side by side, such as insulation and framing, share the area: the U of the whole is the mean of theirs, each weighed by its share. That is the parallel-path method; it lets no heat flow sideways. The isothermal-planes method lets it flow sideways freely: the two paths are put together layer by layer, and the layers then add up. Its R is the lower of the two, and the truth lies between them.',
  'opening-log':
    'Bags times the net weight of a bag, over the volume of the opening’s stretch, is the density reached. Held against the bags planned with the usual spread, or with half a quarter of a bag where that is more: while the opening is still being filled, only too many bags can be told; whether it is light shows when it is full.',
  'trapped-air':
    'A pressure is a load on every part of the ceiling. With the weight of the insulation at its deepest place it is held against the published limit for the board on its framing. That limit was published for weight; holding air against it is our own conclusion. A board without a published limit is unrated: nothing is guessed for it.',
  'blowing-rate':
    'Density times the cross-section that the hose fills is the weight that a foot of hose travel takes. The machine’s rate divided by that is the draw-back speed. Weight divided by rate is the time. Only the time that the machine blows is counted.',
  'test-box':
    'Net weight over the volume of the box is the density of a fill. The mean is held against the target; it is near enough within the share that also holds for bags used against bags planned, since in one volume bags follow density. The spread is the highest less the lowest, as a share of the mean.',
  'hose-marks':
    'Stand at the opening and face the ridge: 12 o’clock is up the slope and over the ridge, 3 o’clock to your right. The directions go evenly round the clock, to the nearest five minutes, and are the fewest from which every place of the stretch lies within the stream’s reach of a push. The tape goes as far from the end of the hose as it is from the opening to the edge of the stretch, less the stand-off. A push that would run into the ring about a hot flue stops before it. Lengths are level: these roofs slope little.',
  moisture:
    'The dew-point method, a screen only: steady, and blind to air that leaks, which carries far more; seal the ceiling first. The temperature falls in a straight line over the R of the layers, the vapour pressure over 1/permeance. Where it would stand above that of saturated air it is held there, and what arrives from the room less what goes on outwards stays as water. A layer that resists both is looked at inside, in twenty steps. Nothing goes on through a layer of no permeance, such as a metal roof.',
  'dew-point':
    'The equations of moist air of ASHRAE Fundamentals 2017, chapter 1: the vapour pressure is the relative humidity times that of saturated air, over ice below freezing; or it follows from a wet-bulb reading and the air pressure. The dew point is where air of that vapour pressure is saturated.',
  'patch-kit':
    'One cap, one square of metal and one of membrane a hole. Squares are cut in rows across the coil and the roll. Where the roll is narrower than the square, each square is laid in the fewest strips that cover it, each lapping the next by the overlap of a patch layer. The bead times its section is the sealant; the share lost is taken off each cartridge, and cartridges and rolls are counted whole. No spare is added to anything else.',
  'patch-layers':
    'The cap has the size of the hole. Each square reaches the overlap beyond what lies below it, on both sides. The screws stand in the middle of the bead under the metal: the middle of each side first, then on towards one corner after another, the two sides of the corner in turn.',
  sealant:
    'What the cartridge holds over the cross-section of the bead is the bead it makes, if nothing is lost. For a length of bead, length times cross-section is the sealant in it; the share lost is taken off each cartridge, and whole cartridges are counted.',
  'sheet-weight':
    'Steel and aluminium by thickness times the weight of a square foot of each inch; galvanized sheet by its gauge, from the published table, which counts the zinc. Times the area, where one is given.',
  receipt:
    'The sheet holds what 16 CFR 460.17 asks of the installer’s receipt and what the energy code asks of the certificate; an item that either asks for and that you left empty is listed as missing. R is typed in from the maker’s paper, with the paper named: our own estimate never lands here, since the rule forbids it. Each part of the house stands by itself, and no areas or R-values are added up. The bags’ weight on the area is held against the label’s least weight for that R.',
  savings:
    'Area × (U before − U after) × heating degree-days is the heat kept in a year; over the efficiency it is the fuel, and times its price the money. Savings of later years are worth less today, by the factors of NIST Handbook 135. Their present worth over the cost is the savings-to-investment ratio that 10 CFR 440.21(d) asks for. Heating only: cooling, and heat that leaks away with air, are not counted.',
  'present-worth':
    'The factors of NIST Handbook 135, each year’s saving counted at the year’s end: (1 + d)^−n for a sum at the end, and the sum of such shares for one in each year, with the escalation of the price in it. At a rate of 0 every year counts in full; where price and rate rise alike, too.',
  'fuel-cost':
    'The price of a gallon or a cubic foot over its heat content is the price of the heat in the fuel; a price by heat is that already. Over the efficiency it is the price of the heat in the rooms. Carbon dioxide is that of the fuel as burnt, by the federal table.',
  'tapered-transmittance':
    'Heat flows through the mean transmittance, not through the mean depth. The closed forms are those of ISO 6946:2017 annex E, whose text was not read; R0 is all that is uniform, films included, with the thinnest insulation; R2 is what the taper adds.',
  'restricted-edge':
    'The federal table gives the share of the nominal R that is kept, from the ratio of the edge’s thickness to the nominal thickness; between its rows a straight line. It holds over the restricted part only.',
  'edge-bays':
    'Each bay reaches from the middle of one truss to the middle of the next, so that the bays add up to the cavity. From one lifted edge the tube goes to the far eave; from both edges each goes to the ridge. It has to fit above the old insulation at the eave; between the trusses no chord is in its way. It stops at its reach, or before the ring kept open about a flue; where a ring stops the tube of one edge short of the ridge, the other goes on to the ring. What no tube reaches is left over. Lengths are level; the slope of these roofs is slight.',
  'ways-in':
    'Roof holes are laid out as on their own page; the longest push is from a hole to the farthest corner of its stretch. From gable ends it is to the middle, or to the other end. A lifted edge has an opening a bay, and the tube goes to the ridge or to the far eave. Each push is held against the reach, and the hose against its room. The crew leader picks the way that reaches all of the cavity with the least damage.',
  'gable-lanes':
    'The width is shared into even lanes, none wider than the fill spreads to both sides of the hose. The hose runs along the middle of its lane; it has to fit above the old insulation and, where there are trusses, between their chords. Each push goes to the middle of the home, or to the other end where one end alone is open, and stops at the reach of the hose or before the ring kept open about a flue; where a ring keeps one push short of the middle, the other goes on past it to the ring. What no push covers is left over. What the fill flies on past the end of the hose is not counted.',
};
