/**
 * Branded quantities. Inside the program lengths are metres and angles radians;
 * millimetres and degrees exist only at the edge (models/, screen, command line).
 * A brand is erased at run time: arithmetic gives a plain number, and the
 * functions below put the brand on where a value enters or leaves.
 */
declare const unit: unique symbol;
export type Quantity<Unit extends string> = number & { readonly [unit]: Unit };

export type Metre = Quantity<'m'>;
export type Millimetre = Quantity<'mm'>;
export type Radian = Quantity<'rad'>;
export type Degree = Quantity<'deg'>;

export const metres = (value: number): Metre => value as Metre;
export const radians = (value: number): Radian => value as Radian;
export const millimetres = (value: number): Millimetre => value as Millimetre;

export const mmToM = (value: number): Metre => (value / 1000) as Metre;
export const mToMm = (value: number): Millimetre => (value * 1000) as Millimetre;
export const degToRad = (value: number): Radian => ((value * Math.PI) / 180) as Radian;
export const radToDeg = (value: number): Degree => ((value * 180) / Math.PI) as Degree;
