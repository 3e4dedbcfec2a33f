/** The loose fills that are blown. */
export const materials = ['glass fibre', 'cellulose', 'mineral wool'] as const;
export type Material = (typeof materials)[number];
