const heights = ['8 ft', '9 ft', '10 ft', '12 ft', '14 ft'];
const floors = ['600 ft²', '720 ft²', '924 ft²', '1100 ft²', '1500 ft²'];

/**
 * What crews meet, by the name of the entry: homes as they are built, lines as they hang, beads as a tip is cut. A declaration says by itself what
 * only it knows; what stands here is read as pages are built, and not sent to a phone with the calculation.
 */
export const usualCases: Readonly<Record<string, readonly string[]>> = {
  'Length of the roof': ['44 ft', '56 ft', '60 ft', '66 ft', '76 ft'],
  'Width across the cavity': ['9 ft 10 in', '11 ft 10 in', '13 ft 10 in'],
  'Height of the edge': heights,
  'Voltage of the line': ['7.2 kV', '12.5 kV', '34.5 kV', '69 kV', '115 kV'],
  'Diameter of the hole': ['4 in', '5 in', '6 in', '7 in', '8 in'],
  'Size of the bead': ['1/8 in', '3/16 in', '1/4 in', '5/16 in', '3/8 in'],
  'Outside diameter or width': ['3 in', '4 in', '6 in', '8 in', '10 in'],
  'Framing of the ceiling': ['16 in', '24 in'],
  'Place of the opening': ['15 ft', '18 ft', '21 ft 6 in', '25 ft', '28 ft'],
  'Nominal R': [
    '11 h·ft²·°F/Btu',
    '19 h·ft²·°F/Btu',
    '22 h·ft²·°F/Btu',
    '25 h·ft²·°F/Btu',
    '30 h·ft²·°F/Btu',
  ],
  'Floor area': floors,
  'Floor of the cavity': floors,
  'Saving in a year': ['75 $', '100 $', '150 $', '200 $', '250 $'],
};
