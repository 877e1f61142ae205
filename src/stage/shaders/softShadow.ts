/**
 * Shadows of lamps that have a size. How far before a point its occluder stands is read from a blurred
 * copy of the shadow map in which the nearest depth prevails (the exponential of Annen et al. 2008);
 * similar triangles give the width of the penumbra, as in percentage-closer soft shadows (Fernando 2005),
 * and a comparison filter averages over it. Where the filter's rim is all lit or all dark its inside is
 * not asked. Depths are compared with the plane of the surface itself, so that a wide filter does not
 * darken a slanted surface.
 */
const RIM_TAPS = 4;
const INNER_TAPS = 12;
/** Receivers farther than this behind the first caster are in the room. */
const SITTER_DEPTH = 0.55;

/**
 * One comparison for each of the points spread evenly over a disc by the golden angle. Written out, not
 * looped over an array: an array of constants indexed by a loop is copied at every pixel.
 */
const taps = (count: number, radiusOf: (share: number) => number): string =>
  Array.from({ length: count }, (_, i) => {
    const radius = radiusOf((i + 0.5) / count);
    const angle = i * 2.399963229728653;
    const [x, y] = [radius * Math.cos(angle), radius * Math.sin(angle)];
    return `\tlit += litAt( compared, at, slope, turned * vec2( ${x.toFixed(5)}, ${y.toFixed(5)} ) );`;
  }).join('\n');

export const softShadowFragment = /* glsl */ `
#if NUM_SPOT_LIGHT_SHADOWS > 0

// How far behind lampFirst the nearest things around a point stand: around the sitter, in the room. Metres.
uniform sampler2D lampDepths[ NUM_SPOT_LIGHT_SHADOWS ];
// World to lamp axes.
uniform mat3 lampAxes[ NUM_SPOT_LIGHT_SHADOWS ];
// Half of the cotangent of the beam's half angle; near; far; diameter of the source.
uniform vec4 lampOptics[ NUM_SPOT_LIGHT_SHADOWS ];
// Depth of the nearest thing that may cast a shadow, metres.
uniform float lampFirst[ NUM_SPOT_LIGHT_SHADOWS ];
// Cosine and sine of a turn of the sampling discs.
uniform vec2 shadowTurn;
// Where a tile lies in its picture, pixels.
uniform vec2 pixelOrigin;

float litAt( sampler2DShadow compared, vec3 at, vec2 slope, vec2 offset ) {
	return texture( compared, vec3( at.xy + offset, at.z + dot( slope, offset ) ) );
}

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
	vec2 nearest = texture2D( depths, at.xy ).rg;
	float stands = reach < ${SITTER_DEPTH} ? nearest.r : nearest.g;
	// What stands nearest here is this surface itself: nothing shades it.
	if ( reach - stands < 0.001 ) return 1.0;
	float height = clamp( reach - stands, 0.004, reach );

	float texels = mapSize.x * halfSource * height / ( depth - height ) * perMetre;
	// A filter too wide for its taps to overlap is turned from pixel to pixel.
	float angle = smoothstep( 6.0, 9.0, texels ) * 6.283185 * interleavedGradientNoise( gl_FragCoord.xy + pixelOrigin );
	// Wider, and a bent surface would shade itself: its plane no longer follows it.
	float width = clamp( texels, 1.2, 18.0 ) / mapSize.x;
	mat2 turned = width * mat2( shadowTurn.x, shadowTurn.y, - shadowTurn.y, shadowTurn.x );
	if ( angle > 0.0 ) turned = turned * mat2( cos( angle ), sin( angle ), - sin( angle ), cos( angle ) );

	// The plane leaves a bent surface the more the wider the filter: 0.2 of what it is over 12 mm, by eye.
	float lift = 0.2 * max( width / perMetre - 0.012, 0.0 );
	at.z -= bias + lift * B / ( depth * depth );
	float lit = 0.0;
${taps(RIM_TAPS, () => 0.94)}
	if ( lit < 0.001 || lit > ${RIM_TAPS - 0.001} ) return lit / ${RIM_TAPS}.0;
${taps(INNER_TAPS, (share) => 0.9 * Math.sqrt(share))}
	return lit / ${RIM_TAPS + INNER_TAPS}.0;
}

#endif
`;
