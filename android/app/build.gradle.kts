plugins {
    alias(libs.plugins.android.application)
    alias(libs.plugins.kotlin.android)
    alias(libs.plugins.kotlin.compose)
}

// Phones of the last ten years: 64-bit ARM, and 32-bit ARM on the cheapest; x86_64 is for emulators.
val abis = listOf("arm64-v8a", "armeabi-v7a", "x86_64")

android {
    namespace = "ladderbook.app"
    compileSdk = 36
    // Its linker lays out pages of 16 KB, which newer phones ask for.
    ndkVersion = "28.2.13676358"
    defaultConfig {
        applicationId = "ladderbook.app"
        // Android 8: file channels and notifications as they are today; under it nothing is tested.
        minSdk = 26
        targetSdk = 36
        versionCode = 1
        versionName = "0.1.0"
        ndk { abiFilters += abis }
    }
    buildTypes {
        release {
            isMinifyEnabled = true
            isShrinkResources = true
            proguardFiles(getDefaultProguardFile("proguard-android-optimize.txt"), "proguard-rules.pro")
        }
    }
    compileOptions {
        sourceCompatibility = JavaVersion.VERSION_17
        targetCompatibility = JavaVersion.VERSION_17
    }
    sourceSets["main"].jniLibs.srcDir(layout.buildDirectory.dir("rust"))
}

kotlin { compilerOptions { jvmTarget = org.jetbrains.kotlin.gradle.dsl.JvmTarget.JVM_17 } }

dependencies {
    implementation(project(":screens"))
    implementation(libs.activity.compose)
    implementation(libs.lifecycle.viewmodel)
    implementation(libs.lifecycle.savedstate)
    implementation(libs.camera.core)
    implementation(libs.camera.camera2)
    implementation(libs.camera.lifecycle)
    implementation(libs.camera.view)
    implementation(libs.core.ktx)
}

/** The core for each ABI. Its Kotlin is read from the library of this computer, built from the same source. */
val core by tasks.registering(Exec::class) {
    workingDir = rootDir.parentFile
    val targets = abis.flatMap { listOf("-t", it) }
    commandLine(
        listOf("cargo", "ndk", "--platform", "26") + targets +
            listOf("-o", layout.buildDirectory.dir("rust").get().asFile.path, "build", "-p", "bindings", "--lib", "--release"),
    )
}

val kotlinOfCore by tasks.registering(Exec::class) {
    workingDir = rootDir.parentFile
    commandLine("./dev", "bindings")
}

tasks.named("preBuild") { dependsOn(core, kotlinOfCore) }
project(":screens").tasks.matching { it.name == "preBuild" }.configureEach { dependsOn(kotlinOfCore) }
