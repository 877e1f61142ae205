/** Hair: shines along its strands in two bands, the second tinted by the hair itself. */
import type { SurfaceText } from './surfaceText';

export const hair: SurfaceText = {
  vertexPars: /* glsl */ `
uniform vec3 whorl;
uniform vec3 whorlAxis;
varying vec3 vStrand;
varying vec2 vAround;
`,
  vertexMain: /* glsl */ `
// Strands lie along the surface, away from the whorl, as combed hair does.
vec3 fromWhorl = position - whorl;
vec3 laid = fromWhorl - normal * dot( fromWhorl, normal );
vStrand = normalMatrix * ( laid + vec3( 0.0, - 1e-4, 0.0 ) );
vec3 ahead = normalize( cross( vec3( 1.0, 0.0, 0.0 ), whorlAxis ) );
vAround = vec2( dot( fromWhorl, cross( whorlAxis, ahead ) ), dot( fromWhorl, ahead ) );
`,
  pars: /* glsl */ `
varying vec3 vStrand;
varying vec2 vAround;
vec3 strand = vec3( 0.0, -1.0, 0.0 );
float strandShift = 0.0;
float strandHash( float cell ) { return fract( sin( cell * 91.3458 ) * 47453.5453 ); }
float strandNoise( float x ) {
	float cell = floor( x );
	float part = x - cell;
	float fine = 1.0 - smoothstep( 0.3, 1.2, fwidth( x ) );
	float value = mix( strandHash( cell ), strandHash( cell + 1.0 ), part * part * ( 3.0 - 2.0 * part ) );
	return mix( 0.5, value, fine );
}
`,
  setup: /* glsl */ `
strand = normalize( vStrand );
float around = atan( vAround.x, vAround.y );
float streaks = strandNoise( around * 22.0 ) * 0.5 + strandNoise( around * 71.0 + 7.0 ) * 0.3 + strandNoise( around * 190.0 + 3.0 ) * 0.2;
strandShift = ( streaks - 0.5 ) * 0.16;
diffuseColor.rgb *= 0.78 + 0.44 * streaks;
`,
  direct: /* glsl */ `
	float facing = dot( geometryNormal, directLight.direction );
	float through = saturate( ( facing + 0.35 ) / 1.82 );
	reflectedLight.directDiffuse += through * directLight.color * BRDF_Lambert( material.diffuseContribution );
	vec3 halfway = normalize( directLight.direction + geometryViewDir );
	float along = dot( strand, halfway );
	float front = smoothstep( - 0.1, 0.5, facing );
	float first = along + 0.10 + strandShift;
	float second = along - 0.16 + 1.6 * strandShift;
	float width1 = 0.011 + 0.25 * lampSpread * lampSpread;
	float width2 = 0.05 + 0.25 * lampSpread * lampSpread;
	float lobe1 = exp( - first * first / ( 2.0 * width1 ) ) * 0.020 / sqrt( width1 );
	float lobe2 = exp( - second * second / ( 2.0 * width2 ) ) * 0.06 / sqrt( width2 );
	reflectedLight.directSpecular += front * directLight.color * RECIPROCAL_PI * ( vec3( lobe1 ) + lobe2 * sqrt( max( material.diffuseContribution, vec3( 0.0 ) ) ) * 0.8 );
`,
};
