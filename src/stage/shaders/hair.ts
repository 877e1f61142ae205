/**
 * Hair: the sheets that the sculpture is made of are cut into single hairs, which shine along their
 * length. A vertex gives the number of the hair (whole numbers are the gaps between hairs) and the
 * share of hairs that are missing there; the direction of the hairs on the surface is square to the
 * gradient of that number, so no tangents are kept.
 */
import type { SurfaceText } from './surfaceText';

const cut = /* glsl */ `
float strandNumber = vStrands.x;
float strandsPerPixel = fwidth( strandNumber );
float strandCell = floor( strandNumber );
float strandChance = strandHash( strandCell );
float strandPart = 2.0 * ( strandNumber - strandCell ) - 1.0;
float missing = vStrands.y;
if ( missing > 0.004 ) {
	// A hair thins out before the place where it is missing.
	float thickness = clamp( 4.0 * ( strandChance + 0.25 - 1.25 * missing ), 0.0, 1.0 );
	float edge = max( 2.0 * strandsPerPixel, 1e-4 );
	float single = clamp( ( thickness - abs( strandPart ) ) / edge + 0.5, 0.0, 1.0 ) * step( 0.01, thickness );
	float covered = mix( 1.0 - missing, single, resolved( strandsPerPixel ) );
	if ( covered < 0.06 ) discard;
	diffuseColor.a = covered;
}
`;

const direction = /* glsl */ `
// A lock seen from behind is lit as from before: its hairs are round.
normal *= faceDirection;
vec3 acrossX = dFdx( - vViewPosition );
vec3 acrossY = dFdy( - vViewPosition );
vec3 plane = cross( acrossX, acrossY );
vec3 rise = cross( acrossY, plane ) * dFdx( strandNumber ) + cross( plane, acrossX ) * dFdy( strandNumber );
float steep = length( rise );
vec3 beside = steep > 0.0 ? rise / steep : vec3( 1.0, 0.0, 0.0 );
beside = normalize( beside - normal * dot( beside, normal ) );
strand = cross( normal, beside );
float seen = resolved( strandsPerPixel );
float seenFine = resolved( 3.7 * strandsPerPixel );
float fine = strandHash( floor( 3.7 * strandNumber ) + 300.0 );
float lock = strandHash( floor( 0.21 * strandNumber ) + 700.0 );
float tone = ( strandChance - 0.5 ) * seen + 0.5 * ( fine - 0.5 ) * seenFine
	+ 0.5 * ( lock - 0.5 ) * resolved( 0.21 * strandsPerPixel );
strandShift = 0.12 * tone;
diffuseColor.rgb *= 1.0 + 0.7 * tone;
normal = normalize( normal + 0.45 * seen * strandPart * beside );
`;

export const hair: SurfaceText = {
  vertexPars: /* glsl */ `
attribute vec2 strands;
varying vec2 vStrands;
`,
  vertexMain: 'vStrands = vec2( 255.0 * strands.x, strands.y );',
  pars: /* glsl */ `
varying vec2 vStrands;
// Along the hair, root to tip; square to it on the surface.
vec3 strand = vec3( 0.0, -1.0, 0.0 );
float strandShift = 0.0;
float strandHash( float cell ) { return fract( sin( cell * 91.3458 + 1.7 ) * 47453.5453 ); }
// 1 where a pattern of this period in pixels can be seen, 0 where it would only shimmer.
float resolved( float perPixel ) { return 1.0 - smoothstep( 0.35, 1.1, perPixel ); }
`,
  setup: `${cut}${direction}`,
  // Two highlights along the hair, the second one tinted by its colour.
  direct: /* glsl */ `
	float facing = dot( geometryNormal, directLight.direction );
	float through = saturate( ( facing + 0.3 ) / 1.69 );
	reflectedLight.directDiffuse += through * directLight.color * BRDF_Lambert( material.diffuseContribution );
	vec3 halfway = normalize( directLight.direction + geometryViewDir );
	float along = dot( strand, halfway );
	float front = smoothstep( - 0.1, 0.5, facing );
	float first = along + 0.08 + strandShift;
	float second = along - 0.14 + 1.6 * strandShift;
	float width1 = 0.03 + 0.25 * lampSpread * lampSpread;
	float width2 = 0.06 + 0.25 * lampSpread * lampSpread;
	float lobe1 = exp( - first * first / ( 2.0 * width1 ) ) * 0.008 / sqrt( width1 );
	float lobe2 = exp( - second * second / ( 2.0 * width2 ) ) * 0.075 / sqrt( width2 );
	reflectedLight.directSpecular += front * directLight.color * RECIPROCAL_PI * ( vec3( lobe1 ) + lobe2 * sqrt( max( material.diffuseContribution, vec3( 0.0 ) ) ) * 0.8 );
`,
};
