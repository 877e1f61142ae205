/**
 * Eyes: a flat iris behind a clear cornea, seen refracted at its surface, with pupil, fibres and limbal
 * ring drawn by the shader, and a wet surface that mirrors the lamps themselves.
 *
 * Sizes, mm: the cornea's outer radius 7.8 and the aqueous humour's index 1.336 are those of Gullstrand's
 * schematic eye (corneal radius 7.7) as commonly rounded; iris breadth 11.71 white to white (Ruefer et
 * al. 2005); a pupil of 3.8 in studio light is a choice.
 */
import type { SurfaceText } from './surfaceText';

const IRIS_RADIUS = 5.85;

export const eye: SurfaceText = {
  mirrors: 'boxes',
  vertexPars: /* glsl */ `
// Millimetres along the eye's own axes (right, up, out), from the foremost point.
attribute vec3 eyePlace;
attribute vec3 eyeUp;
attribute vec3 eyeAxis;
attribute vec3 irisColour;
varying vec3 vEyePlace;
varying vec3 vEyeUp;
varying vec3 vEyeAxis;
varying vec3 vIris;
`,
  vertexMain: /* glsl */ `
vEyePlace = eyePlace;
vEyeUp = normalMatrix * eyeUp;
vEyeAxis = normalMatrix * eyeAxis;
vIris = irisColour;
`,
  pars: /* glsl */ `
varying vec3 vEyePlace;
varying vec3 vEyeUp;
varying vec3 vEyeAxis;
varying vec3 vIris;
// Share of iris against white, the point of the iris that is seen (radii of it), the eye's axes.
float inIris = 0.0;
vec2 irisAt = vec2( 0.0 );
mat3 eyeAxes = mat3( 1.0 );

float fibreHash( float cell ) { return fract( sin( cell * 12.9898 ) * 43758.5453 ); }
float fibres( float turn, float count, float seed ) {
	float x = turn * count;
	float cell = floor( x );
	float part = x - cell;
	float fine = 1.0 - smoothstep( 0.35, 1.1, fwidth( turn ) * count );
	float value = mix( fibreHash( mod( cell, count ) + seed ), fibreHash( mod( cell + 1.0, count ) + seed ), part * part * ( 3.0 - 2.0 * part ) );
	return ( value - 0.5 ) * fine;
}

vec3 irisShade( vec3 base, vec2 at ) {
	float r = length( at );
	float turn = atan( at.y, at.x ) * 0.15915494 + 0.5;
	// No seam in the width of a pixel where the turn jumps.
	float wave = 0.012 * sin( 9.0 * turn * 6.2831853 + 4.0 * r );
	float f = 1.1 * fibres( fract( turn + wave ), 60.0, 1.0 ) + 0.9 * fibres( fract( turn - 0.5 * wave ), 130.0, 57.0 );
	// The ruff about a third out is lighter and warmer; outside it furrows; darker towards the ring.
	float ruff = exp( - pow( ( r - 0.5 ) / 0.12, 2.0 ) );
	vec3 c = base * ( 1.0 + f * ( 0.55 + 0.5 * smoothstep( 0.35, 0.6, r ) ) );
	c = mix( c, c * vec3( 1.55, 1.32, 1.0 ) + vec3( 0.012, 0.006, 0.0 ), 0.55 * ruff );
	c *= 1.0 - 0.35 * smoothstep( 0.55, 0.36, r );
	c *= 1.0 - 0.72 * smoothstep( 0.78, 1.0, r );
	float rim = max( fwidth( r ), 0.02 );
	return mix( vec3( 0.0025 ), max( c, vec3( 0.0 ) ), smoothstep( 0.325 - rim, 0.325 + rim, r ) );
}
`,
  setup: /* glsl */ `
vec3 eyeOut = normalize( vEyeAxis );
vec3 eyeRight = normalize( cross( vEyeUp, eyeOut ) );
eyeAxes = mat3( eyeRight, cross( eyeOut, eyeRight ), eyeOut );
float fromAxis = length( vEyePlace.xy );
float soft = max( fwidth( fromAxis ), 0.38 );
inIris = vEyePlace.z > - 6.0 ? 1.0 - smoothstep( ${IRIS_RADIUS} - soft, ${IRIS_RADIUS} + soft, fromAxis ) : 0.0;
vec3 cornea = vec3( vEyePlace.xy / 7.8, 0.0 );
cornea.z = sqrt( max( 0.0, 1.0 - dot( cornea.xy, cornea.xy ) ) );
vec3 seenFrom = normalize( vViewPosition ) * eyeAxes;
vec3 bent = refract( - seenFrom, cornea, 1.0 / 1.336 );
float way = max( 0.0, ( vEyePlace.z + 2.55 ) / max( - bent.z, 0.2 ) );
irisAt = ( vEyePlace.xy + bent.xy * way ) / ${IRIS_RADIUS};
vec3 white = diffuseColor.rgb;
vec3 behind = irisShade( vIris, irisAt );
// The ring is the white's own edge over the iris: bluish grey, soft.
white *= 1.0 - 0.3 * ( 1.0 - smoothstep( ${IRIS_RADIUS} - 0.2, ${IRIS_RADIUS} + 1.1, fromAxis ) );
diffuseColor.rgb = mix( white, behind, inIris );
normal = normalize( mix( normal, eyeAxes * cornea, smoothstep( 6.6, 5.2, fromAxis ) * step( - 6.0, vEyePlace.z ) ) );
// The tear film climbs the lids: its edge turns to the light.
float brink = ( 1.0 - smoothstep( 0.28, 0.62, vOpen ) ) * step( vEyePlace.y, 0.0 );
normal = normalize( normal + 0.35 * brink * eyeAxes[ 1 ] );
`,
  direct: /* glsl */ `
	float facing = dot( geometryNormal, directLight.direction );
	vec3 towards = directLight.direction * eyeAxes;
	// Light enters through the cornea and gathers on the far side of the iris.
	float gathered = saturate( towards.z * 0.8 + 0.2 ) * ( 1.0 - 0.75 * dot( irisAt, towards.xy ) );
	float through = mix( saturate( ( facing + 0.25 ) / 1.5625 ), max( gathered, 0.0 ), inIris );
	vec3 warmed = mix( vec3( 1.0 ), vec3( 1.0, 0.93, 0.9 ), ( 1.0 - inIris ) * ( 1.0 - saturate( facing ) ) );
	reflectedLight.directDiffuse += warmed * through * directLight.color * BRDF_Lambert( material.diffuseContribution );
	// The wet surface mirrors the lamp's disc: its radiance is irradiance over the solid angle it fills.
	float angle = acos( clamp( dot( reflect( - geometryViewDir, geometryNormal ), directLight.direction ), - 1.0, 1.0 ) );
	float rim = clamp( fwidth( angle ), 0.12 * lampSpread, 0.6 * lampSpread );
	float disc = 1.0 - smoothstep( lampSpread - rim, lampSpread + rim, angle );
	float mirrored = 0.025 + 0.975 * pow( 1.0 - saturate( dot( geometryNormal, geometryViewDir ) ), 5.0 );
	reflectedLight.directSpecular += disc * mirrored * min( RECIPROCAL_PI / ( lampSpread * lampSpread ), 60.0 ) * lampLight * smoothstep( 0.1, 0.5, lampShadow );
`,
};
