/**
 * Shadows of lamps that have a size. The mean and variance of the depths around a point, as the lamp sees
 * them, give the mean height of what stands before it (variance soft shadow mapping, Yang et al. 2010);
 * similar triangles then give the penumbra's width, and a comparison filter averages over it. Depths are
 * compared with the plane of the surface itself, so that a wide filter does not darken a slanted surface.
 */
export const FILTER_TAPS = 24;
/** Side of the texture of depth moments, texels. */
export const MOMENTS_SIZE = 256;

/** Points spread evenly over the unit disc (golden angle), as a shader's constant array. */
function discPoints(name: string, count: number): string {
  const points = Array.from({ length: count }, (_, i) => {
    const radius = Math.sqrt((i + 0.5) / count);
    const angle = i * 2.399963229728653;
    return `vec2(${(radius * Math.cos(angle)).toFixed(6)}, ${(radius * Math.sin(angle)).toFixed(6)})`;
  });
  return `const vec2 ${name}[ ${count} ] = vec2[](\n\t${points.join(',\n\t')}\n);`;
}

export const softShadowFragment = /* glsl */ `
#if NUM_SPOT_LIGHT_SHADOWS > 0

// Mean and mean square of the depth before the lamp less lampFirst, metres; coarser levels average wider.
uniform sampler2D lampMoments[ NUM_SPOT_LIGHT_SHADOWS ];
// World to lamp axes.
uniform mat3 lampAxes[ NUM_SPOT_LIGHT_SHADOWS ];
// Half of the cotangent of the beam's half angle; near; far; diameter of the source.
uniform vec4 lampOptics[ NUM_SPOT_LIGHT_SHADOWS ];
// Depth of the nearest thing that may cast a shadow, metres.
uniform float lampFirst[ NUM_SPOT_LIGHT_SHADOWS ];
// Cosine and sine of a turn of the sampling discs.
uniform vec2 shadowTurn;

${discPoints('FILTER_DISC', FILTER_TAPS)}

float softShadow( sampler2DShadow compared, sampler2D moments, mat3 axes, vec4 optics, float first, vec4 coord, vec2 mapSize, vec3 normal ) {
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
	float bias = 0.0012 * B / ( depth * depth );

	float perMetre = optics.x / depth;
	float halfSource = 0.5 * optics.w;
	float reach = clamp( depth - first, 0.05, 0.8 * depth );
	float search = halfSource * reach / ( depth - reach ) * perMetre;
	vec2 around = textureLod( moments, at.xy, log2( max( 1.5 * search * ${MOMENTS_SIZE}.0, 1.0 ) ) ).rg;
	float before = depth - first - around.x;
	if ( before < 0.0006 ) return 1.0;
	float spread = max( around.y - around.x * around.x, 0.0 );
	float height = min( before + spread / before, reach );

	float penumbra = halfSource * height / ( depth - height ) * perMetre;
	mat2 turned = mat2( shadowTurn.x, shadowTurn.y, - shadowTurn.y, shadowTurn.x );
	float width = max( penumbra, 1.2 / mapSize.x );
	float lit = 0.0;
	for ( int i = 0; i < ${FILTER_TAPS}; i ++ ) {
		vec2 offset = turned * FILTER_DISC[ i ] * width;
		lit += texture( compared, vec3( at.xy + offset, at.z + dot( slope, offset ) - bias ) );
	}
	return lit / ${FILTER_TAPS}.0;
}

#endif
`;
