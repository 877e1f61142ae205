/**
 * Shadows of lamps that have a size. How far before a point its occluder stands is read from a blurred
 * copy of the shadow map in which the nearest depth prevails (the exponential of Annen et al. 2008);
 * similar triangles give the width of the penumbra, as in percentage-closer soft shadows (Fernando 2005),
 * and a comparison filter averages over it. Where the filter's rim is all lit or all dark its inside is
 * not asked. Depths are compared with the plane of the surface itself, so that a wide filter does not
 * darken a slanted surface.
 */
const RIM_TAPS = 5;
const INNER_TAPS = 15;
/** Side of the blurred copy, texels. */
export const BLURRED_SIZE = 256;

/** Exponential of a depth before which things stand, kept within the range of a half float. */
export interface Falloff {
  /** Per metre. */
  readonly rate: number;
  /** Depth behind the lamp's first caster at which the exponential is 1, metres. */
  readonly unit: number;
}
/** Steep for the sitter, whose parts are centimetres apart; gentle for what stands in the room. */
export const STEEP: Falloff = { rate: 45, unit: 0.22 };
export const GENTLE: Falloff = { rate: 6, unit: 1.6 };
/** Receivers farther than this behind the first caster are in the room. */
const SITTER_DEPTH = 0.55;

const disc = (count: number, radiusOf: (share: number) => number): string =>
  Array.from({ length: count }, (_, i) => {
    const radius = radiusOf((i + 0.5) / count);
    const angle = i * 2.399963229728653;
    return `vec2( ${(radius * Math.cos(angle)).toFixed(5)}, ${(radius * Math.sin(angle)).toFixed(5)} )`;
  }).join(', ');

const depthFrom = (falloff: Falloff, channel: string): string =>
  `${falloff.unit} - log( max( ${channel}, 1e-7 ) ) / ${falloff.rate.toFixed(1)}`;

export const softShadowFragment = /* glsl */ `
#if NUM_SPOT_LIGHT_SHADOWS > 0

// Means of exp( rate * ( unit - depth + lampFirst ) ), steep and gentle; coarser levels average wider.
uniform sampler2D lampDepths[ NUM_SPOT_LIGHT_SHADOWS ];
// World to lamp axes.
uniform mat3 lampAxes[ NUM_SPOT_LIGHT_SHADOWS ];
// Half of the cotangent of the beam's half angle; near; far; diameter of the source.
uniform vec4 lampOptics[ NUM_SPOT_LIGHT_SHADOWS ];
// Depth of the nearest thing that may cast a shadow, metres.
uniform float lampFirst[ NUM_SPOT_LIGHT_SHADOWS ];
// Cosine and sine of a turn of the sampling discs.
uniform vec2 shadowTurn;

const vec2 RIM[ ${RIM_TAPS} ] = vec2[]( ${disc(RIM_TAPS, () => 0.94)} );
const vec2 INNER[ ${INNER_TAPS} ] = vec2[]( ${disc(INNER_TAPS, (share) => 0.9 * Math.sqrt(share))} );

float softShadow( sampler2DShadow compared, sampler2D depths, mat3 axes, vec4 optics, float first, vec4 coord, vec2 mapSize, vec3 normal ) {
	vec3 at = coord.xyz / coord.w;
	if ( any( lessThan( at, vec3( 0.0 ) ) ) || any( greaterThan( at, vec3( 1.0 ) ) ) ) return 1.0;

	float depth = coord.w;
	float nearDepth = optics.y;
	float farDepth = optics.z;
	// Stored depth is A - B / depth.
	float A = farDepth / ( farDepth - nearDepth );
	float B = A * nearDepth;

	// The surface's plane in the map: how the stored depth changes along it.
	vec3 facing = axes * normal;
	vec3 ray = vec3( ( at.xy - 0.5 ) / optics.x, - 1.0 );
	float towards = min( dot( facing, ray ), - 0.12 );
	vec2 slope = - B * facing.xy / ( optics.x * depth * towards );
	// A surface that turns away from the lamp would shadow itself by the map's coarseness alone.
	float turning = smoothstep( 0.25, - 0.1, - dot( facing, ray ) );
	float bias = ( 0.0028 + 0.012 * turning ) * B / ( depth * depth );

	float perMetre = optics.x / depth;
	float halfSource = 0.5 * optics.w;
	float reach = clamp( depth - first, 0.05, 0.8 * depth );
	float search = 0.35 * halfSource * reach / ( depth - reach ) * perMetre;
	vec2 blurred = textureLod( depths, at.xy, max( log2( search * ${BLURRED_SIZE}.0 ), 0.5 ) ).rg;
	float stands = reach < ${SITTER_DEPTH} ? ${depthFrom(STEEP, 'blurred.r')} : ${depthFrom(GENTLE, 'blurred.g')};
	float height = clamp( reach - stands, 0.004, reach );

	float texels = mapSize.x * halfSource * height / ( depth - height ) * perMetre;
	// A filter too wide for its taps to overlap is turned from pixel to pixel.
	float angle = smoothstep( 6.0, 9.0, texels ) * 6.283185 * interleavedGradientNoise( gl_FragCoord.xy );
	float width = max( texels, 1.2 ) / mapSize.x;
	mat2 turned = width * mat2( shadowTurn.x, shadowTurn.y, - shadowTurn.y, shadowTurn.x );
	if ( angle > 0.0 ) turned = turned * mat2( cos( angle ), sin( angle ), - sin( angle ), cos( angle ) );

	float lit = 0.0;
	for ( int i = 0; i < ${RIM_TAPS}; i ++ ) {
		vec2 offset = turned * RIM[ i ];
		lit += texture( compared, vec3( at.xy + offset, at.z + dot( slope, offset ) - bias ) );
	}
	if ( lit < 0.001 || lit > ${RIM_TAPS - 0.001} ) return lit / ${RIM_TAPS}.0;
	for ( int i = 0; i < ${INNER_TAPS}; i ++ ) {
		vec2 offset = turned * INNER[ i ];
		lit += texture( compared, vec3( at.xy + offset, at.z + dot( slope, offset ) - bias ) );
	}
	return lit / ${RIM_TAPS + INNER_TAPS}.0;
}

#endif
`;
