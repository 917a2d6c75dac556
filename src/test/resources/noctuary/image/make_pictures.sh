#!/bin/sh
# Small pictures in the forms that processing programs write, and reference.ppm (16 bits) with their values.
# Made with ImageMagick 6.9.11-60 (libtiff 4.5.0, libpng 1.6.39). Run in this folder.
set -e
convert -size 29x17 -seed 11 plasma:tomato-steelblue -depth 16 reference.ppm
F="-define quantum:format=floating-point"
convert reference.ppm -depth 8 -compress LZW rgb8-lzw.tif
convert reference.ppm -depth 16 -compress LZW rgb16-lzw.tif
convert reference.ppm -depth 16 -compress Zip -endian MSB rgb16-zip-msb.tif
convert reference.ppm -depth 16 -compress LZW -interlace plane rgb16-lzw-planar.tif
convert reference.ppm -depth 16 -compress LZW -define tiff:tile-geometry=16x16 rgb16-lzw-tiled.tif
convert reference.ppm -depth 16 -alpha set -channel A -evaluate set 60% +channel -compress Zip rgba16-zip.tif
convert reference.ppm -depth 16 -compress RLE rgb16-packbits.tif
convert reference.ppm -depth 32 $F -compress none rgbf32.tif 2>/dev/null || true
convert reference.ppm -depth 32 $F -compress Zip rgbf32-zip.tif
convert reference.ppm -depth 32 $F -compress Zip -endian MSB rgbf32-zip-msb.tif
convert reference.ppm -depth 32 $F -compress LZW -interlace plane rgbf32-lzw-planar.tif
convert reference.ppm -depth 16 $F -compress none rgbf16.tif 2>/dev/null || true
convert reference.ppm -depth 16 $F -compress Zip rgbf16-zip.tif
convert reference.ppm -depth 16 rgb16.png
convert reference.ppm -depth 16 -interlace PNG rgb16-interlaced.png
convert reference.ppm -depth 16 -alpha set -channel A -evaluate set 60% +channel rgba16.png
convert reference.ppm -depth 8 -quality 100 -sampling-factor 4:4:4 rgb.jpg
convert reference.ppm -depth 32 $F -compress Zip -define tiff:predictor=3 -define tiff:tile-geometry=16x16 rgbf32-zip-tiled.tif
convert reference.ppm -depth 16 $F -compress Zip -define tiff:predictor=3 rgbf16-zip-differences.tif
convert reference.ppm -depth 64 $F -compress Zip -define tiff:predictor=3 rgbf64-zip.tif
convert reference.ppm -depth 16 -compress LZW -define tiff:fill-order=lsb rgb16-lzw-lsb.tif
convert reference.ppm -depth 16 -colorspace CMYK -compress Zip cmyk16-zip.tif
convert reference.ppm -depth 8 -compress JPEG -quality 100 rgb8-jpeg.tif
