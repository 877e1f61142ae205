/**
 * Skin: light that enters leaves a little farther on, red farthest. So the turn from light to shade is
 * softened over the lamp's own width and, where the surface bends sharply, over the way light travels in
 * it, as in pre-integrated skin (Penner and Borshukov 2011): on the nose's wing it shows, on the cheek
 * hardly. The shine has two lobes (a sharp thin one over a broad one, as measured by Weyrich et al. 2006)
 * and a grain of pores that fades before it would flicker. Widths and shares are set by eye.
 */
import type { SurfaceText } from './surfaceText';

/** How far light travels in skin, mm, by channel: red, green, blue; by eye after d'Eon and Luebke 2007. */
const SCATTER = 'vec3( 2.4, 0.75, 0.42 )';
/** Largest bend the attribute holds, per mm. */
export const SHARPEST_BEND = 0.25;

export const skin: SurfaceText = {
  vertexPars: /* glsl */ `
attribute float bend;
attribute vec3 sculpted;
varying float vBend;
varying vec3 vPlace;
`,
  vertexMain: /* glsl */ `
vBend = bend;
vPlace = 1000.0 * sculpted;
`,
  pars: /* glsl */ `
varying float vBend;
// On the skin as sculpted, mm, so that its grain goes with it.
varying vec3 vPlace;
vec3 softness = vec3( 0.0 );
vec3 poreNormal = vec3( 0.0, 0.0, 1.0 );

// A number from a lattice point, the same on every machine (integers only).
float lattice( ivec3 cell ) {
	uvec3 v = uvec3( cell ) * 1664525u + 1013904223u;
	v.x += v.y * v.z; v.y += v.z * v.x; v.z += v.x * v.y;
	v ^= v >> 16u;
	v.x += v.y * v.z;
	return float( v.x & 65535u ) / 65535.0;
}

// Value noise -1..1 with its gradient.
vec4 grain( vec3 at ) {
	ivec3 cell = ivec3( floor( at ) );
	vec3 f = at - vec3( cell );
	vec3 u = f * f * ( 3.0 - 2.0 * f );
	vec3 du = 6.0 * f * ( 1.0 - f );
	float a = lattice( cell );
	float b = lattice( cell + ivec3( 1, 0, 0 ) );
	float c = lattice( cell + ivec3( 0, 1, 0 ) );
	float d = lattice( cell + ivec3( 1, 1, 0 ) );
	float e = lattice( cell + ivec3( 0, 0, 1 ) );
	float g = lattice( cell + ivec3( 1, 0, 1 ) );
	float h = lattice( cell + ivec3( 0, 1, 1 ) );
	float i = lattice( cell + ivec3( 1, 1, 1 ) );
	float k1 = b - a, k2 = c - a, k3 = e - a;
	float k4 = a - b - c + d, k5 = a - c - e + h, k6 = a - b - e + g;
	float k7 = - a + b + c - d + e - g - h + i;
	float value = a + k1 * u.x + k2 * u.y + k3 * u.z + k4 * u.x * u.y + k5 * u.y * u.z + k6 * u.z * u.x + k7 * u.x * u.y * u.z;
	vec3 slope = du * vec3(
		k1 + k4 * u.y + k6 * u.z + k7 * u.y * u.z,
		k2 + k5 * u.z + k4 * u.x + k7 * u.z * u.x,
		k3 + k6 * u.x + k5 * u.y + k7 * u.x * u.y
	);
	return vec4( 2.0 * value - 1.0, 2.0 * slope );
}
`,
  setup: /* glsl */ `
softness = vec3( 0.06, 0.022, 0.013 ) + ${SCATTER} * ( vBend * ${SHARPEST_BEND} );
// Blood lies unevenly: faint, wide blotches.
float blood = grain( vPlace / 13.0 ).x + 0.6 * grain( vPlace / 5.0 + 31.0 ).x;
diffuseColor.rgb *= 1.0 + blood * vec3( 0.006, 0.015, 0.016 );
// Pores, as far as a pixel can show them.
float footprint = max( length( dFdx( vPlace ) ), length( dFdy( vPlace ) ) );
float seen = 1.0 - smoothstep( 0.18, 0.5, footprint );
if ( seen > 0.0 ) {
	vec3 rough = grain( vPlace / 0.62 ).yzw * 0.75 + grain( vPlace / 1.5 + 17.0 ).yzw * 0.4;
	// The slope on the skin as it is posed: on screen both change alike (Mikkelsen 2010).
	vec3 acrossX = - 1000.0 * dFdx( vViewPosition );
	vec3 acrossY = - 1000.0 * dFdy( vViewPosition );
	vec3 riseX = cross( acrossY, normal );
	vec3 riseY = cross( normal, acrossX );
	float area = dot( acrossX, riseX );
	vec3 lean = ( dot( rough, dFdx( vPlace ) ) * riseX + dot( rough, dFdy( vPlace ) ) * riseY )
		/ ( area < 0.0 ? min( area, - 1e-6 ) : max( area, 1e-6 ) );
	poreNormal = normalize( normal - 0.055 * seen * ( lean - normal * dot( lean, normal ) ) );
} else poreNormal = normal;
`,
  direct: /* glsl */ `
	float facing = dot( geometryNormal, directLight.direction );
	vec3 width = softness + lampSpread;
	vec3 rise = saturate( ( facing + width ) / ( 2.0 * width ) );
	vec3 arriving = mix( width * rise * rise, vec3( facing ), step( width, vec3( facing ) ) );
	vec3 bled = pow( vec3( max( lampShadow, 1e-4 ) ), vec3( 0.9, 1.0, 1.02 ) );
	vec3 light = arriving * bled * lampLight;
	// Fine down catches light at the edge.
	float edge = 1.0 - saturate( dot( geometryNormal, geometryViewDir ) );
	float down = 0.05 * edge * edge * edge;
	reflectedLight.directDiffuse += light * ( BRDF_Lambert( material.diffuseContribution ) + down * RECIPROCAL_PI );
	vec3 irradiance = saturate( dot( poreNormal, directLight.direction ) ) * directLight.color * smoothstep( - 0.02, 0.12, facing );
	PhysicalMaterial sharp = material;
	sharp.roughness = 0.62 * material.roughness;
	reflectedLight.directSpecular += irradiance * (
		0.8 * BRDF_GGX( directLight.direction, geometryViewDir, poreNormal, widened( material, 0.5 * lampSpread ) )
		+ 0.2 * BRDF_GGX( directLight.direction, geometryViewDir, poreNormal, widened( sharp, 0.5 * lampSpread ) ) );
`,
};
